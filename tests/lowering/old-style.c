// flags: -mmcu=atmega328p -std=gnu89
int legacy();
add(a, b)
int a;
char b;
{
    undeclared(a);
    return a + b;
}
void main() { legacy(1.5, 'c'); add(1, 2); }
// expect: function add(a : i16, b : i8) : i16
// expect:   call:i16 undeclared(i16[&a])
// expect:   return (i16[&a] + i16(i8[&b]))
// expect: function main() : void
// expect:   call:i16 legacy(1.5:f32, 99:i16)
// expect:   call:i16 add(1:i16, 2:i16)
