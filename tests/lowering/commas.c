// flags: -mmcu=atmega328p
int g(int);
int f(int n)
{
    int r = (g(1), g(2), n);
    for (n = 0, r = 9; n < r; n++, r--)
        ;
    return n++, r;
}
// expect: function f(n : i16) : i16
// expect:   local r : i16 = ((call:i16 g(1:i16), call:i16 g(2:i16)), i16[&n])
// expect:   block {
// expect:     ((i16[&n] = 0:i16), (i16[&r] = 9:i16))
// expect:     loop while (i16[&n] < i16[&r]) step ((i16[&n] += 1:i16 in i16 (old)), (i16[&r] -= 1:i16 in i16 (old))) {
// expect:     }
// expect:   }
// expect:   return ((i16[&n] += 1:i16 in i16 (old)), i16[&r])
