// Pointers and arrays: arithmetic, differences, pointers to pointers, to functions, to rows, into strings and program memory.
#include "result.h"

typedef uint8_t (*operation_t)(uint8_t, uint8_t);

F uint8_t plus(uint8_t a, uint8_t b) { return a + b; }
F uint8_t minus(uint8_t a, uint8_t b) { return a - b; }
F uint8_t times(uint8_t a, uint8_t b) { return a * b; }
static const operation_t operations[] = {plus, minus, times};
static const uint16_t table[3][4] = {{1, 2, 3, 4}, {10, 20, 30, 40}, {100, 200, 300, 400}};
static const char *const names[] = {"idle", "standby", "down"};
static const uint16_t flash[] PROGMEM = {1000, 2000, 3000};
static const char text[] PROGMEM = "cistern";
static uint8_t global = 5;
static uint8_t *pointer_to_global = &global;

F uint16_t sum(const uint16_t *p, uint8_t n) { uint16_t s = 0; while (n--) s += *p++; return s; }
F uint16_t sum_back(const uint16_t *p, uint8_t n) { uint16_t s = 0; for (const uint16_t *q = p + n; q-- > p;) s = s * 2 + *q; return s; }
F int16_t difference(const uint16_t *a, const uint16_t *b) { return b - a; }
F uint16_t cell(uint8_t y, uint8_t x) { return table[y][x]; }
F uint16_t row(const uint16_t (*r)[4], uint8_t x) { return (*(r + 1))[x]; }
F uint16_t flat(uint8_t i) { return ((const uint16_t *)table)[i]; }
F uint8_t apply(uint8_t i, uint8_t a, uint8_t b) { return operations[i](a, b); }
F uint8_t callback(operation_t f, uint8_t a) { return f ? f(a, a) : 0; }
F operation_t choose(bool more) { return more ? plus : minus; }
F void exchange(uint8_t *a, uint8_t *b) { uint8_t t = *a; *a = *b; *b = t; }
F uint8_t exchanged(uint8_t a, uint8_t b) { exchange(&a, &b); return a * 16 + b; }
F uint8_t through_two(uint8_t n) { uint8_t a = n, b = n * 2, *p = &a, **q = &p; **q += 1; *q = &b; *p += 3; return a * 16 + b; }
F uint8_t letter(uint8_t i, uint8_t j) { return names[i][j]; }
F uint8_t length(const char *s) { const char *p = s; while (*p) p++; return p - s; }
F uint8_t library(const char *s) { char b[12]; strcpy(b, s); strcat(b, "!"); return strlen(b) * 10 + (strcmp(b, "down!") == 0); }
F uint16_t far(uint8_t i) { return pgm_read_word(&flash[i]); }
F uint8_t far_text(uint8_t i) { return pgm_read_byte(text + i); }
F uint8_t far_length(void) { return strlen_P(text); }
F uint8_t step(void) { uint8_t a[] = {1, 2, 3, 4}, *p = a; uint8_t x = *p++; x = x * 10 + *++p; x += (*p)++; return x * 2 + a[2]; }
F uint8_t negative(void) { uint8_t a[] = {9, 8, 7}, *p = a + 2; return p[-1] * 16 + *(p - 2); }
F uint8_t index_swapped(uint8_t i) { uint8_t a[] = {9, 8, 7}; return i[a]; }
F uint8_t change_global(uint8_t n) { *pointer_to_global = n; return global + 1; }
F uint8_t alias(void) { uint16_t w = 0x1122; uint8_t *p = (uint8_t *)&w; p[1] = 0x33; return w >> 8; }
F uint16_t alias_wide(void) { uint8_t b[4] = {1, 2, 3, 4}; return *(uint16_t *)(b + 1); }
F uint8_t moved(void) { uint8_t b[] = {1, 2, 3, 4, 5}; memmove(b + 1, b, 4); return b[1] * 100 + b[4] * 10 + b[0]; }
F uint8_t ends(uint8_t n) { uint8_t b[8]; memset(b, n, sizeof b); b[7] = 1; return b[0] + b[6] + b[7]; }
F uint8_t compare(const char *a, const char *b) { int16_t r = strcmp(a, b); return r < 0 ? 1 : r > 0 ? 2 : 3; }
F uint8_t find(const char *s, char c) { const char *p = strchr(s, c); return p ? p - s : 99; }

int main(void)
{
    uint16_t values[] = {3, 5, 7, 11};
    R(sum(values, 4));
    R(sum_back(values, 4));
    R(difference(&values[1], &values[3]));
    R(difference(&values[3], values));
    R(cell(2, 1));
    R(row(table, 3));
    R(flat(6));
    R(apply(0, 9, 4));
    R(apply(1, 9, 14));
    R(apply(2, 9, 40));
    R(callback(times, 7));
    R(callback(0, 7));
    R(choose(true)(3, 2));
    R(choose(false)(3, 2));
    R(exchanged(3, 9));
    R(through_two(4));
    R(letter(1, 4));
    R(length("drip"));
    R(library("down"));
    R(far(2));
    R(far_text(3));
    R(far_length());
    R(step());
    R(negative());
    R(index_swapped(2));
    R(change_global(41));
    R(global);
    R(alias());
    R(alias_wide());
    R(moved());
    R(ends(7));
    R(compare("abc", "abd"));
    R(compare("abd", "abc"));
    R(compare("abc", "abc"));
    R(find("valve", 'v' + 0));
    R(find("valve", 'e'));
    R(find("valve", 'z'));
    R(sizeof table / sizeof table[0][0]);
    R(&values[4] - values);
    R(*(values + 2));
    END();
}
