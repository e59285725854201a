// flags: -mmcu=atmega328p
// The usual arithmetic conversions with an int of 16 bits.
long f(unsigned char c, signed char s, int i, unsigned u, long l, unsigned long ul)
{
    i = c + s;
    u = c * 300u;
    l = i + u;
    l = u + l;
    ul = l + ul;
    l = c << 8;
    l = (long)c << 8;
    i = c == s;
    i = u > -1;
    i = l > u;
    c = l;
    s = 200;
    l = -c;
    l = ~c;
    l = (unsigned char)i;
    l = (signed char)0x80;
    l = 0x8000;
    l = 40000;
    ul = 1UL << 31;
    return 7 % -3 + 9 / -2;
}
// expect: function f(c : u8, s : i8, i : i16, u : u16, l : i32, ul : u32) : i32
// expect:   i16[&i] = (i16(u8[&c]) + i16(i8[&s]))
// expect:   u16[&u] = (u16(u8[&c]) * 300:u16)
// expect:   i32[&l] = i32((u16(i16[&i]) + u16[&u]))
// expect:   i32[&l] = (i32(u16[&u]) + i32[&l])
// expect:   u32[&ul] = (u32(i32[&l]) + u32[&ul])
// expect:   i32[&l] = i32((i16(u8[&c]) << 8:i16))
// expect:   i32[&l] = (i32(u8[&c]) << 8:i16)
// expect:   i16[&i] = (i16(u8[&c]) == i16(i8[&s]))
// expect:   i16[&i] = (u16[&u] > 65535:u16)
// expect:   i16[&i] = (i32[&l] > i32(u16[&u]))
// expect:   u8[&c] = u8(i32[&l])
// expect:   i8[&s] = -56:i8
// expect:   i32[&l] = i32(-:i16(i16(u8[&c])))
// expect:   i32[&l] = i32(~:i16(i16(u8[&c])))
// expect:   i32[&l] = i32(u8(i16[&i]))
// expect:   i32[&l] = -128:i32
// expect:   i32[&l] = 32768:i32
// expect:   i32[&l] = 40000:i32
// expect:   u32[&ul] = 2147483648:u32
// expect:   return -3:i32
