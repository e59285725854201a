// Shifts of every width, signed and unsigned, by constants and by variables.
#include "result.h"

F uint16_t left8(uint8_t a, uint8_t n) { return (uint16_t)a << n; }
F uint16_t left16(uint16_t a, uint8_t n) { return a << n; }
F uint32_t left32(uint32_t a, uint8_t n) { return a << n; }
F uint8_t right8(uint8_t a, uint8_t n) { return a >> n; }
F uint16_t right16(uint16_t a, uint8_t n) { return a >> n; }
F uint32_t right32(uint32_t a, uint8_t n) { return a >> n; }
F int8_t sar8(int8_t a, uint8_t n) { return a >> n; }
F int16_t sar16(int16_t a, uint8_t n) { return a >> n; }
F int32_t sar32(int32_t a, uint8_t n) { return a >> n; }
F uint8_t rotate8(uint8_t a, uint8_t n) { return (uint8_t)(a << n) | a >> (8 - n); }
F uint16_t rotate16(uint16_t a) { return a << 3 | a >> 13; }
F uint32_t rotate32(uint32_t a) { return a << 11 | a >> 21; }
F uint8_t bits8(uint8_t a) { uint8_t n = 0; while (a) { n += a & 1; a >>= 1; } return n; }
F uint8_t bits32(uint32_t a) { uint8_t n = 0; for (; a; a &= a - 1) n++; return n; }
F uint8_t reverse8(uint8_t a) { uint8_t r = 0; for (uint8_t i = 0; i < 8; i++) { r <<= 1; r |= a & 1; a >>= 1; } return r; }
F uint8_t swap8(uint8_t a) { return a << 4 | a >> 4; }
F uint16_t swap16(uint16_t a) { return a << 8 | a >> 8; }
F uint32_t swap32(uint32_t a) { return a << 24 | (a & 0xff00) << 8 | (a >> 8 & 0xff00) | a >> 24; }
F uint8_t lowest(uint8_t a) { return a & -a; }
F uint16_t mask(uint8_t n) { return (1u << n) - 1; }
F uint16_t mask_high(uint8_t n) { return ~((1u << n) - 1); }
F uint32_t one_long(uint8_t n) { return 1UL << n; }
F int16_t shift_signed_left(int16_t a) { return (int16_t)((uint16_t)a << 2); }
F uint64_t left64(uint64_t a, uint8_t n) { return a << n; }
F uint64_t right64(uint64_t a, uint8_t n) { return a >> n; }
F int64_t sar64(int64_t a, uint8_t n) { return a >> n; }
F int16_t chain(uint8_t a) { return a << 3 >> 2 << 1; }
F uint8_t parity(uint8_t a) { a ^= a >> 4; a ^= a >> 2; a ^= a >> 1; return a & 1; }

int main(void)
{
    R(left8(0xFF, 4));
    R(left8(0xFF, 15));
    R(left16(0x1234, 5));
    R(left32(0x12345678, 13));
    R(right8(0x80, 7));
    R(right16(0xFEDC, 9));
    R(right32(0xFEDCBA98, 17));
    R(sar8(-128, 3));
    R(sar8(127, 3));
    R(sar16(-30000, 7));
    R(sar32(-2000000000L, 20));
    R(rotate8(0xB1, 3));
    R(rotate8(0xB1, 0));
    R(rotate16(0xABCD));
    R(rotate32(0xDEADBEEF));
    R(bits8(0xB7));
    R(bits32(0xDEADBEEF));
    R(reverse8(0x1D));
    R(swap8(0x3C));
    R(swap16(0x3CA5));
    R(swap32(0x12345678));
    R(lowest(0x58));
    R(mask(11));
    R(mask_high(3));
    R(one_long(20));
    R(shift_signed_left(-5000));
    R(left64(0x123456789ULL, 23));
    R(left64(0x123456789ULL, 23) >> 32);
    R(right64(0xFEDCBA9876543210ULL, 36));
    R(sar64(-5000000000LL, 16));
    R(sar64(-5000000000LL, 16) >> 32);
    R(chain(0xE7));
    R(parity(0x6B));
    END();
}
