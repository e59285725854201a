// Multiplication, division and remainder at all widths.
#include "result.h"

F int16_t div16(int16_t a, int16_t b) { return a / b; }
F int16_t mod16(int16_t a, int16_t b) { return a % b; }
F uint16_t udiv16(uint16_t a, uint16_t b) { return a / b; }
F uint16_t umod16(uint16_t a, uint16_t b) { return a % b; }
F int32_t div32(int32_t a, int32_t b) { return a / b; }
F int32_t mod32(int32_t a, int32_t b) { return a % b; }
F uint32_t udiv32(uint32_t a, uint32_t b) { return a / b; }
F uint32_t umod32(uint32_t a, uint32_t b) { return a % b; }
F int32_t mul32(int32_t a, int32_t b) { return a * b; }
F uint64_t mul64(uint32_t a, uint32_t b) { return (uint64_t)a * b; }
F int64_t div64(int64_t a, int64_t b) { return a / b; }
F uint64_t umod64(uint64_t a, uint64_t b) { return a % b; }
F uint16_t divide_mixed(uint16_t a, int8_t b) { return a / b; }
F uint32_t baud(uint32_t clock, uint32_t rate) { return (clock + rate * 8) / (rate * 16) - 1; }
F uint16_t scale(uint16_t reading) { return (uint32_t)reading * 3300 / 1024; }
F uint16_t scale_wrong(uint16_t reading) { return reading * 33 / 1024; }
F int16_t celsius(uint16_t raw) { return ((int16_t)raw - 500) * 5 / 9; }
F uint16_t power(uint16_t base, uint8_t n) { uint16_t r = 1; while (n--) r *= base; return r; }
F uint32_t factorial(uint8_t n) { return n < 2 ? 1 : n * factorial(n - 1); }
F uint16_t gcd(uint16_t a, uint16_t b) { while (b) { uint16_t t = a % b; a = b; b = t; } return a; }
F uint16_t root(uint32_t n) { uint32_t r = 0, bit = 1UL << 30; while (bit > n) bit >>= 2; while (bit) { if (n >= r + bit) { n -= r + bit; r = (r >> 1) + bit; } else r >>= 1; bit >>= 2; } return r; }
F uint16_t fibonacci(uint8_t n) { uint16_t a = 0, b = 1; while (n--) { uint16_t c = a + b; a = b; b = c; } return a; }
F bool prime(uint16_t n) { for (uint16_t d = 2; d * d <= n; d++) if (n % d == 0) return false; return n > 1; }
F uint8_t crc8(const uint8_t *p, uint8_t n) { uint8_t c = 0xFF; while (n--) { c ^= *p++; for (uint8_t i = 0; i < 8; i++) c = c & 0x80 ? c << 1 ^ 0x31 : c << 1; } return c; }
F uint16_t crc16(const char *p) { uint16_t c = 0xFFFF; for (; *p; p++) { c ^= (uint8_t)*p; for (uint8_t i = 0; i < 8; i++) c = c & 1 ? c >> 1 ^ 0xA001 : c >> 1; } return c; }
F uint8_t bcd(uint8_t n) { return n / 10 << 4 | n % 10; }
F uint16_t lfsr(uint16_t s, uint8_t n) { while (n--) s = s >> 1 ^ (-(s & 1) & 0xB400); return s; }
F uint8_t saturate(uint8_t a, uint8_t b) { uint16_t s = a + b; return s > 255 ? 255 : s; }
F int16_t absolute(int16_t a) { return a < 0 ? -a : a; }
F uint32_t hash(const char *s) { uint32_t h = 2166136261UL; while (*s) { h ^= (uint8_t)*s++; h *= 16777619UL; } return h; }

int main(void)
{
    static const uint8_t data[] = {0xBE, 0xEF, 0x12};
    R(div16(-7, 2));
    R(mod16(-7, 2));
    R(div16(7, -2));
    R(mod16(7, -2));
    R(div16(-32767, 10));
    R(udiv16(60000u, 7));
    R(umod16(60000u, 7));
    R(div32(-1000000L, 333));
    R(mod32(-1000000L, 333));
    R(udiv32(4000000000UL, 77777));
    R(umod32(4000000000UL, 77777));
    R(mul32(-12345, 54321L));
    R(mul64(0xDEADBEEF, 0xCAFEBABE));
    R(mul64(0xDEADBEEF, 0xCAFEBABE) >> 32);
    R(div64(-123456789012345LL, 98765));
    R(umod64(0xFEDCBA9876543210ULL, 1000000007ULL));
    R(divide_mixed(10, -1));
    R(baud(8000000UL, 9600));
    R(scale(1000));
    R(scale_wrong(2000));
    R(celsius(212));
    R(power(7, 9));
    R(factorial(10));
    R(gcd(1071, 462));
    R(root(123456789UL));
    R(fibonacci(24));
    R(prime(251));
    R(prime(253));
    R(crc8(data, sizeof data));
    R(crc16("moisture"));
    R(bcd(59));
    R(lfsr(0xACE1, 20));
    R(saturate(200, 100));
    R(saturate(100, 100));
    R(absolute(-1234));
    R(hash("gauge"));
    END();
}
