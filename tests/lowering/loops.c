// flags: -mmcu=atmega328p
void work(int);
void main(void)
{
    int n = 3;
    while (n--)
        work(n);
    do {
        if (n == 5)
            continue;
        work(n);
    } while (++n < 9);
    for (int i = 0, j = 8; i < j; i++, j--)
        work(i);
    while (1) {
        if (n > 4)
            break;
    }
}
// expect: function main() : void
// expect:   local n : i16 = 3:i16
// expect:   loop while i16[&n] -= 1:i16 in i16 (old) {
// expect:     call:void work(i16[&n])
// expect:   }
// expect:   loop after while ((i16[&n] += 1:i16 in i16) < 9:i16) {
// expect:     if (i16[&n] == 5:i16) {
// expect:       continue
// expect:     }
// expect:     call:void work(i16[&n])
// expect:   }
// expect:   block {
// expect:     local i : i16 = 0:i16
// expect:     local j : i16 = 8:i16
// expect:     loop while (i16[&i] < i16[&j]) step ((i16[&i] += 1:i16 in i16 (old)), (i16[&j] -= 1:i16 in i16 (old))) {
// expect:       call:void work(i16[&i])
// expect:     }
// expect:   }
// expect:   loop while 1:i16 {
// expect:     if (i16[&n] > 4:i16) {
// expect:       break
// expect:     }
// expect:   }
