// Floating point where firmware uses it: scaling constants, delay arithmetic, comparison.
#include "result.h"

F int16_t truncated(float f) { return (int16_t)f; }
F uint16_t rounded(float f) { return (uint16_t)(f + 0.5f); }
F float half(float f) { return f / 2; }
F bool more(float a, float b) { return a > b; }
F uint32_t bits(float f) { uint32_t w; memcpy(&w, &f, sizeof w); return w; }
F int32_t scaled(int16_t n) { return n * 0.25f * 100; }
F uint8_t size(void) { return sizeof(float) * 10 + sizeof(double); }
F uint16_t ticks(double ms) { return (uint16_t)(8000000UL / 1024 * ms / 1000); }

int main(void)
{
    R(truncated(-3.75f));
    R(rounded(2.5f));
    R(half(9) * 4);
    R(more(1.5f, 1.25f));
    R(more(-1.5f, 1.25f));
    R(bits(0.15625f));
    R(scaled(37));
    R(size());
    R(ticks(25));
    R((uint32_t)(1.0 / 3 * 1000));
    R((int)(0.1 + 0.2 > 0.25));
    END();
}
