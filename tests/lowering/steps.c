// flags: -mmcu=atmega328p
void f(unsigned char c, signed char s, unsigned long l, float x, long *p, struct pair { int a, b; } *q)
{
    c++;
    --s;
    l--;
    ++x;
    *p++ = 1;
    *++p = 2;
    (*p)++;
    q++->a = 3;
    --q;
    (++q)->b--;
}
// expect: function f(c : u8, s : i8, l : u32, x : f32, p : p16, q : p16) : void
// expect:   u8[&c] += 1:i16 in i16 (old)
// expect:   i8[&s] -= 1:i16 in i16
// expect:   u32[&l] -= 1:u32 in u32 (old)
// expect:   f32[&x] += 1:f32 in f32
// expect:   i32[(p16[&p] += 1:i16 * 4 in p16 (old))] = 1:i32
// expect:   i32[(p16[&p] += 1:i16 * 4 in p16)] = 2:i32
// expect:   i32[p16[&p]] += 1:i32 in i32 (old)
// expect:   i16[(p16[&q] += 1:i16 * 4 in p16 (old))] = 3:i16
// expect:   p16[&q] -= 1:i16 * 4 in p16
// expect:   i16[((p16[&q] += 1:i16 * 4 in p16) + 2)] -= 1:i16 in i16 (old)
