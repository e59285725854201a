// flags: -mmcu=atmega328p
// Labels, jumps through addresses, local labels of the same name.
int f(int n)
{
    static void *const table[] = { &&zero, &&one };
    if (n < 2)
        goto *table[n];
again:
    if (--n > 3)
        goto again;
    ({
        __label__ again;
        if (n)
            goto again;
        n = 4;
    again:
        n++;
    });
zero:
    return 0;
one:
    return 1;
}
// expect: global static const table : [4] = { +0: &&zero, +2: &&one }
// expect: function f(n : i16) : i16
// expect:   if (i16[&n] < 2:i16) {
// expect:     goto *p16[(&table + i16[&n] * 2)]
// expect:   }
// expect:   label again:
// expect:   if ((i16[&n] -= 1:i16 in i16) > 3:i16) {
// expect:     goto again
// expect:   }
// expect:   ({ if i16[&n] { goto again.2 } i16[&n] = 4:i16 label again.2: i16[&n] += 1:i16 in i16 (old) })
// expect:   label zero:
// expect:   return 0:i16
// expect:   label one:
// expect:   return 1:i16
