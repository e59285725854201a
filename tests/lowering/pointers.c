// flags: -mmcu=atmega328p
struct row { volatile unsigned char *port; unsigned char mask; };
int f(struct row *r, unsigned char *p, unsigned char *q, void *v, unsigned char n)
{
    p = p + n;
    p = n + p;
    p = q - 1;
    r = r + 2;
    r = &r[n];
    n = q - p;
    int d = r - (r + 3);
    v = v + 1;
    v = p;
    p = v;
    *r->port |= r->mask;
    r[1].port[2] = 3;
    n = p < q;
    n = v == p;
    n = !p;
    n = (unsigned)p;
    p = (unsigned char *)(unsigned)n;
    return p[-1] + d;
}
// expect: function f(r : p16, p : p16, q : p16, v : p16, n : u8) : i16
// expect:   p16[&p] = (p16[&p] + i16(u8[&n]) * 1)
// expect:   p16[&p] = (p16[&p] + i16(u8[&n]) * 1)
// expect:   p16[&p] = (p16[&q] + -1)
// expect:   p16[&r] = (p16[&r] + 6)
// expect:   p16[&r] = (p16[&r] + u8[&n] * 3)
// expect:   u8[&n] = u8(pointer-difference:i16(p16[&q], p16[&p], 1))
// expect:   local d : i16 = pointer-difference:i16(p16[&r], (p16[&r] + 9), 3)
// expect:   p16[&v] = (p16[&v] + 1)
// expect:   p16[&v] = p16[&p]
// expect:   p16[&p] = p16[&v]
// expect:   u8![p16[p16[&r]]] |= i16(u8[(p16[&r] + 2)]) in i16
// expect:   u8![(p16[(p16[&r] + 3)] + 2)] = 3:u8
// expect:   u8[&n] = u8((p16[&p] < p16[&q]))
// expect:   u8[&n] = u8((p16[&v] == p16[&p]))
// expect:   u8[&n] = u8(!:i16(p16[&p]))
// expect:   u8[&n] = u8(u16(p16[&p]))
// expect:   p16[&p] = p16(u16(u8[&n]))
// expect:   return (i16(u8[(p16[&p] + -1)]) + i16[&d])
