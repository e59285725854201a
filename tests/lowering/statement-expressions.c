// flags: -mmcu=atmega328p
#define MAX(a, b) ({ __typeof__(a) _a = (a); typeof(b) _b = (b); _a > _b ? _a : _b; })
int f(int n, unsigned char c)
{
    int r = MAX(n, c);
    ({ r++; });
    r = ({ if (n) r = 2; r; });
    __extension__({ int q = 1; (void)q; });
    return ({ goto out; 1; }) + r;
out:
    return 0;
}
// expect: function f(n : i16, c : u8) : i16
// expect:   local r : i16 = ({ local _a : i16 = i16[&n] local _b : u8 = u8[&c] yield ((i16[&_a] > i16(u8[&_b])) ? i16[&_a] : i16(u8[&_b])) })
// expect:   ({ yield i16[&r] += 1:i16 in i16 (old) })
// expect:   i16[&r] = ({ if i16[&n] { i16[&r] = 2:i16 } yield i16[&r] })
// expect:   ({ local q : i16 = 1:i16 yield i16[&q] })
// expect:   return (({ goto out yield 1:i16 }) + i16[&r])
// expect:   label out:
// expect:   return 0:i16
