// flags: -mmcu=atmega328p
// Parameters declared as arrays or functions are pointers.
struct row { volatile unsigned char *port; unsigned char mask; };
typedef unsigned char quad[4];
void aliased(unsigned char a[4]) __attribute__((alias("first")));
void first(unsigned char a[4]) { a[1] = 2; }
int f(int n, unsigned char a[4], const struct row rows[], int m[2][3], int g(int), quad q, volatile int v[])
{
    *a++ = 1;
    a[n] = a[1];
    a += 2;
    a = n ? a : q;
    a = q + 1;
    rows->port[0] |= rows[n].mask;
    (*rows[1].port)--;
    m[1][2] = 3;
    v[1] = 4;
    first(q);
    n = a == q;
    n = a - q;
    if (!a)
        a = 0;
    g = f ? g : 0;
    return g(4) + sizeof a;
}
int main(argc, argv) int argc; char *argv[]; { argv++; return argv[1][2]; }
// expect: function aliased(<parameter 1> : p16) : void
// expect:   call:void first(p16[&<parameter 1>])
// expect: function first(a : p16) : void
// expect:   u8[(p16[&a] + 1)] = 2:u8
// expect: function f(n : i16, a : p16, rows : p16, m : p16, g : p16, q : p16, v : p16) : i16
// expect:   u8[(p16[&a] += 1:i16 * 1 in p16 (old))] = 1:u8
// expect:   u8[(p16[&a] + i16[&n] * 1)] = u8[(p16[&a] + 1)]
// expect:   p16[&a] += 2:i16 * 1 in p16
// expect:   p16[&a] = (i16[&n] ? p16[&a] : p16[&q])
// expect:   p16[&a] = (p16[&q] + 1)
// expect:   u8![p16[p16[&rows]]] |= i16(u8[((p16[&rows] + i16[&n] * 3) + 2)]) in i16
// expect:   u8![p16[(p16[&rows] + 3)]] -= 1:i16 in i16 (old)
// expect:   i16[(p16[&m] + 10)] = 3:i16
// expect:   i16![(p16[&v] + 2)] = 4:i16
// expect:   call:void first(p16[&q])
// expect:   i16[&n] = (p16[&a] == p16[&q])
// expect:   i16[&n] = pointer-difference:i16(p16[&a], p16[&q], 1)
// expect:   if !:i16(p16[&a]) {
// expect:     p16[&a] = 0x0
// expect:   }
// expect:   p16[&g] = (&f ? p16[&g] : 0x0)
// expect:   return i16((u16(call:i16 *p16[&g](4:i16)) + 2:u16))
// expect: function main(argc : i16, argv : p16) : i16
// expect:   p16[&argv] += 1:i16 * 2 in p16 (old)
// expect:   return i16(i8[(p16[(p16[&argv] + 2)] + 2)])
