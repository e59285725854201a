// flags: -mmcu=atmega328p
static int of_char(int c) { return c; }
static int of_long(long l) { return (int)l; }
#define OF(x) _Generic((x), long: of_long, unsigned long: of_long, default: of_char)(x)
#define SIZE(x) _Generic((x), char: 1, int: 2, unsigned int: 3, default: 4)
int f(char c, long l, unsigned u)
{
    _Static_assert(sizeof(int) == 2, "int");
    return OF(c) + OF(l) + SIZE(c) + SIZE(u) + SIZE(l);
}
// expect: function static of_char(c : i16) : i16
// expect:   return i16[&c]
// expect: function static of_long(l : i32) : i16
// expect:   return i16(i32[&l])
// expect: function f(c : i8, l : i32, u : u16) : i16
// expect:   return ((((call:i16 of_char(i16(i8[&c])) + call:i16 of_long(i32[&l])) + 1:i16) + 3:i16) + 4:i16)
