// flags: -mmcu=atmega328p
int g(void);
long f(int a, unsigned char b, long c, char *p)
{
    int r = a ? b : c;
    r = a ?: b;
    c = b ?: c;
    r = a && b || !p;
    if (p)
        r = p == 0;
    if (!(a & 4))
        r = a > 0 ? g() : -1;
    a ? (void)g() : (void)0;
    return a > b;
}
// expect: function f(a : i16, b : u8, c : i32, p : p16) : i32
// expect:   local r : i16 = i16((i16[&a] ? i32(u8[&b]) : i32[&c]))
// expect:   i16[&r] = (i16[&a] ?: i16(u8[&b]))
// expect:   i32[&c] = (i32(i16(u8[&b])) ?: i32[&c])
// expect:   i16[&r] = ((i16[&a] && i16(u8[&b])) || !:i16(p16[&p]))
// expect:   if p16[&p] {
// expect:     i16[&r] = (p16[&p] == 0x0)
// expect:   }
// expect:   if !:i16((i16[&a] & 4:i16)) {
// expect:     i16[&r] = ((i16[&a] > 0:i16) ? call:i16 g() : -1:i16)
// expect:   }
// expect:   (i16[&a] ? call:i16 g() : 0:i16)
// expect:   return i32((i16[&a] > i16(u8[&b])))
