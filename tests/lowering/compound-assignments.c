// flags: -mmcu=atmega328p
// The type that is computed in is not that of the object.
void f(unsigned char c, int i, unsigned u, long l, float x, int *p, volatile unsigned char *r)
{
    c += 300;
    c -= l;
    i *= u;
    u /= i;
    l %= c;
    i |= l;
    i &= c;
    l ^= i;
    i += x;
    x -= i;
    p += 2;
    p -= c;
    *r |= 1 << 2;
    *r++ = c;
    p[i++] += p[--i];
    i = c = 3;
}
// expect: function f(c : u8, i : i16, u : u16, l : i32, x : f32, p : p16, r : p16) : void
// expect:   u8[&c] += 300:i16 in i16
// expect:   u8[&c] -= i32[&l] in i32
// expect:   i16[&i] *= u16[&u] in u16
// expect:   u16[&u] /= u16(i16[&i]) in u16
// expect:   i32[&l] %= i32(u8[&c]) in i32
// expect:   i16[&i] |= i32[&l] in i32
// expect:   i16[&i] &= i16(u8[&c]) in i16
// expect:   i32[&l] ^= i32(i16[&i]) in i32
// expect:   i16[&i] += f32[&x] in f32
// expect:   f32[&x] -= f32(i16[&i]) in f32
// expect:   p16[&p] += 2:i16 * 2 in p16
// expect:   p16[&p] -= i16(u8[&c]) * 2 in p16
// expect:   u8![p16[&r]] |= 4:i16 in i16
// expect:   u8![(p16[&r] += 1:i16 * 1 in p16 (old))] = u8[&c]
// expect:   i16[(p16[&p] + (i16[&i] += 1:i16 in i16 (old)) * 2)] += i16[(p16[&p] + (i16[&i] -= 1:i16 in i16) * 2)] in i16
// expect:   i16[&i] = i16((u8[&c] = 3:u8))
