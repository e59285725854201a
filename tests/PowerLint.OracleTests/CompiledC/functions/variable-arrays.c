// Arrays of variable length.
#include "result.h"

F uint8_t variable_array(uint8_t n) { uint8_t a[n]; for (uint8_t i = 0; i < n; i++) a[i] = i * i; return a[n - 1]; }
F uint8_t sum_rows(uint8_t n) { uint8_t a[n][2], s = 0; for (uint8_t i = 0; i < n; i++) { a[i][0] = i; a[i][1] = 2 * i; } for (uint8_t i = 0; i < n; i++) s += a[i][0] + a[i][1]; return s; }
F uint8_t size(uint8_t n) { uint16_t a[n + 1]; a[0] = n; return sizeof a + a[0]; }

int main(void)
{
    R(variable_array(9));
    R(sum_rows(5));
    R(size(4));
    END();
}
