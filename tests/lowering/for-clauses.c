// flags: -mmcu=atmega328p
// The tree leaves out the clauses that are empty; the text tells which they are.
#define FOREVER for (;;)
#define UNTIL(c) for (; !(c);)
void work(int);
void main(void)
{
    int i = 0;
    for (; i < 3;)
        work(1);
    for (i = 1;;) {
        work(2);
        break;
    }
    for (;; i++) {
        work(3);
        break;
    }
    for (i = 0; i < 4;) /* no step; really */
        work(4);
    for (; i < 5; /* ; */ i++)
        work(5);
    for (i = ';';; i--) {
        work(6);
        break;
    }
    for (int k = 0; ; ) {
        work(k);
        break;
    }
    UNTIL(i > 7)
        i++;
    FOREVER { }
}
// expect: function main() : void
// expect:   local i : i16 = 0:i16
// expect:   loop while (i16[&i] < 3:i16) {
// expect:     call:void work(1:i16)
// expect:   }
// expect:   block {
// expect:     i16[&i] = 1:i16
// expect:     loop {
// expect:       call:void work(2:i16)
// expect:       break
// expect:     }
// expect:   }
// expect:   loop step i16[&i] += 1:i16 in i16 (old) {
// expect:     call:void work(3:i16)
// expect:     break
// expect:   }
// expect:   block {
// expect:     i16[&i] = 0:i16
// expect:     loop while (i16[&i] < 4:i16) {
// expect:       call:void work(4:i16)
// expect:     }
// expect:   }
// expect:   loop while (i16[&i] < 5:i16) step i16[&i] += 1:i16 in i16 (old) {
// expect:     call:void work(5:i16)
// expect:   }
// expect:   block {
// expect:     i16[&i] = 59:i16
// expect:     loop step i16[&i] -= 1:i16 in i16 (old) {
// expect:       call:void work(6:i16)
// expect:       break
// expect:     }
// expect:   }
// expect:   block {
// expect:     local k : i16 = 0:i16
// expect:     loop {
// expect:       call:void work(i16[&k])
// expect:       break
// expect:     }
// expect:   }
// expect:   loop while !:i16((i16[&i] > 7:i16)) {
// expect:     i16[&i] += 1:i16 in i16 (old)
// expect:   }
// expect:   loop {
// expect:   }
