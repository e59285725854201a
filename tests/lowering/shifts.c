// flags: -mmcu=atmega328p
// The result of a shift has the promoted type of its left side.
long f(unsigned char c, int i, unsigned long l, signed char s)
{
    i = c << 3;
    i = c >> i;
    l = 1 << c;
    l = 1UL << c;
    l >>= c;
    c <<= 1L;
    s >>= 1;
    return i << 20;
}
// expect: function f(c : u8, i : i16, l : u32, s : i8) : i32
// expect:   i16[&i] = (i16(u8[&c]) << 3:i16)
// expect:   i16[&i] = (i16(u8[&c]) >> i16[&i])
// expect:   u32[&l] = u32((1:i16 << i16(u8[&c])))
// expect:   u32[&l] = (1:u32 << i16(u8[&c]))
// expect:   u32[&l] >>= i16(u8[&c]) in u32
// expect:   u8[&c] <<= 1:i32 in i16
// expect:   i8[&s] >>= 1:i16 in i16
// expect:   return i32((i16[&i] << 20:i16))
