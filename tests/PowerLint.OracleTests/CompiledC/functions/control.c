// Switches, loops, jumps, recursion, static locals, short circuits, commas.
#include "result.h"

static uint8_t calls;
F bool note(bool result) { calls++; return result; }
F uint8_t fall(uint8_t n) { uint8_t r = 0; switch (n) { case 0: r += 1; case 1: r += 10; break; case 2 ... 4: r += 50; break; default: r = 200; case 9: r += 3; } return r; }
F uint8_t default_first(uint8_t n) { switch (n) { default: return 9; case 3: return 4; case 5: return 6; } }
F uint8_t switch_wide(uint32_t n) { switch (n) { case 0x10000UL: return 1; case 0x0UL: return 2; case 0xFFFFFFFFUL: return 3; } return 0; }
F uint8_t switch_signed(int8_t n) { switch (n) { case -1: return 1; case -128: return 2; case 127: return 3; } return 0; }
F uint8_t inside(uint8_t n) { uint8_t i = 0, r = 0; switch (n) { for (; i < 5; i++) { case 1: r += 1; case 2: r += 10; } } return r; }
F uint8_t nested(uint8_t a, uint8_t b) { switch (a) { case 1: switch (b) { case 1: return 11; } break; case 2: return 20; } return 99; }
F uint8_t breaks(void) { uint8_t n = 0; for (uint8_t i = 0;; i++) { if (i == 3) continue; if (i > 6) break; for (uint8_t j = 0; j < 5; j++) { if (j == 2) break; n++; } } return n; }
F uint8_t do_once(uint8_t n) { uint8_t c = 0; do c++; while (n-- > 10); return c; }
F uint8_t backwards(void) { uint8_t n = 0; for (uint8_t i = 10; i-- > 0;) n = n * 2 + (i & 1); return n; }
F uint8_t forever(void) { uint8_t n = 0; while (1) { if (++n == 77) goto out; } out: return n; }
F uint8_t jump_back(void) { uint8_t n = 0; again: n += 7; if (n < 50) goto again; return n; }
F uint8_t jump_in(uint8_t n) { uint8_t i = 3, r = 0; if (n) goto in; for (i = 0; i < 5; i++) { in: r += i; } return r; }
F uint8_t collatz(uint16_t n) { uint8_t steps = 0; while (n != 1) { n = n & 1 ? 3 * n + 1 : n / 2; steps++; } return steps; }
F uint16_t ackermann(uint8_t m, uint8_t n) { return m == 0 ? n + 1 : n == 0 ? ackermann(m - 1, 1) : ackermann(m - 1, ackermann(m, n - 1)); }
F bool odd(uint8_t n);
F bool even(uint8_t n) { return n == 0 || odd(n - 1); }
F bool odd(uint8_t n) { return n != 0 && even(n - 1); }
F uint8_t counter(void) { static uint8_t n = 3; return n++; }
F uint8_t counter_words(void) { static uint16_t n; n += 300; return n >> 8; }
F uint8_t short_and(void) { calls = 0; bool r = note(false) && note(true); return calls * 2 + r; }
F uint8_t short_or(void) { calls = 0; bool r = note(true) || note(false); return calls * 2 + r; }
F uint8_t short_chain(void) { calls = 0; bool r = (note(true) && note(false)) || (note(true) && note(true)); return calls * 2 + r; }
F uint8_t comma(uint8_t n) { uint8_t a; return a = n + 1, a *= 2, a - 1; }
F uint8_t comma_loop(void) { uint8_t i, j, n = 0; for (i = 0, j = 20; i < j; i += 2, j--) n++; return n * 10 + (i - j); }
F uint8_t lvalue(bool which) { uint8_t a = 1, b = 2; *(which ? &a : &b) = 9; return a * 16 + b; }
F uint8_t chained(uint8_t n) { return n < 10 ? 1 : n < 20 ? 2 : n < 30 ? 3 : 4; }
F uint8_t elvis(uint8_t n) { return n ?: 77; }
F uint8_t statement(uint8_t n) { return ({ uint8_t t = n; while (t > 9) t -= 9; t; }) + 1; }
F uint8_t decrement_test(uint8_t n) { uint8_t c = 0; while (n--) c++; return c + n; }
F uint8_t hanoi(uint8_t n) { return n ? 2 * hanoi(n - 1) + 1 : 0; }
F uint8_t search(const uint8_t *a, uint8_t n, uint8_t key) { uint8_t l = 0, h = n; while (l < h) { uint8_t m = (l + h) / 2; if (a[m] < key) l = m + 1; else h = m; } return l; }
F uint8_t sorted(void) { uint8_t a[] = {7, 3, 9, 1, 5}; for (uint8_t i = 1; i < 5; i++) { uint8_t k = a[i], j = i; while (j && a[j - 1] > k) { a[j] = a[j - 1]; j--; } a[j] = k; } return a[0] * 25 + a[1] * 5 + a[3]; }
F uint8_t computed(uint8_t n) { static void *const to[] = {&&a, &&b, &&c}; goto *to[n]; a: return 1; b: return 2; c: return 3; }
F uint8_t duff(uint8_t n) { uint8_t c = 0, r = (n + 3) / 4; switch (n % 4) { case 0: do { c++; case 3: c++; case 2: c++; case 1: c++; } while (--r); } return c; }

int main(void)
{
    static const uint8_t keys[] = {1, 4, 9, 16, 25, 36};
    R(fall(0));
    R(fall(1));
    R(fall(3));
    R(fall(7));
    R(fall(9));
    R(default_first(3));
    R(default_first(4));
    R(switch_wide(0x10000UL));
    R(switch_wide(0xFFFF));
    R(switch_wide(-1L));
    R(switch_signed(-1));
    R(switch_signed(-128));
    R(inside(1));
    R(inside(2));
    R(inside(3));
    R(nested(1, 1));
    R(nested(1, 2));
    R(breaks());
    R(do_once(0));
    R(do_once(13));
    R(backwards());
    R(forever());
    R(jump_back());
    R(jump_in(0));
    R(jump_in(1));
    R(collatz(27));
    R(ackermann(2, 3));
    R(even(10));
    R(odd(10));
    R(counter());
    R(counter());
    R(counter_words() + counter_words());
    R(short_and());
    R(short_or());
    R(short_chain());
    R(comma(4));
    R(comma_loop());
    R(lvalue(true));
    R(lvalue(false));
    R(chained(15));
    R(chained(35));
    R(elvis(0));
    R(elvis(5));
    R(statement(40));
    R(decrement_test(4));
    R(hanoi(7));
    R(search(keys, 6, 16));
    R(search(keys, 6, 17));
    R(sorted());
    R(computed(1));
    R(duff(7));
    R(duff(8));
    END();
}
