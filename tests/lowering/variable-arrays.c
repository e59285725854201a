// flags: -mmcu=atmega328p
// The number of elements is kept when the declaration is reached.
int g(unsigned char *p);
int f(int n)
{
    unsigned char buffer[n];
    buffer[0] = 1;
    n = 0;
    return g(buffer) + sizeof buffer;
}
// expect: function f(n : i16) : i16
// expect:   local <length 1> : i16 = i16[&n]
// expect:   local buffer : [0]
// expect:   u8[&buffer] = 1:u8
// expect:   i16[&n] = 0:i16
// expect:   return i16((u16(call:i16 g(&buffer)) + (u16(i16[&<length 1>]) * 1:u16)))
