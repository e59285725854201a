// Integer promotions and the usual arithmetic conversions with an int of 16 bits.
#include "result.h"

F int16_t not8(uint8_t a) { return ~a; }
F uint8_t not8_narrow(uint8_t a) { return ~a; }
F bool not_equal(uint8_t a, uint8_t b) { return a == ~b; }
F bool not_equal_cast(uint8_t a, uint8_t b) { return a == (uint8_t)~b; }
F int16_t add8(uint8_t a, uint8_t b) { return a + b; }
F uint8_t add8_narrow(uint8_t a, uint8_t b) { return a + b; }
F int16_t mean(uint8_t a, uint8_t b) { return (a + b) / 2; }
F uint8_t mean_narrow(uint8_t a, uint8_t b) { return (uint8_t)(a + b) / 2; }
F bool sub_negative(uint8_t a, uint8_t b) { return a - b < 0; }
F bool sub16_negative(uint16_t a, uint16_t b) { return a - b < 0; }
F bool mixed16(int16_t a, uint16_t b) { return a < b; }
F bool mixed8(int8_t a, uint8_t b) { return a < b; }
F bool mixed8_16(int8_t a, uint16_t b) { return a < b; }
F bool mixed32(int16_t a, uint32_t b) { return a < b; }
F bool wide_signed(uint16_t a, int32_t b) { return a > b; }
F int32_t wide_from_16(uint16_t a, int16_t b) { return a + b; }
F int32_t wide_cast(uint16_t a, int16_t b) { return (int32_t)a + b; }
F uint32_t mul16(uint16_t a, uint16_t b) { return a * b; }
F uint32_t mul16_wide(uint16_t a, uint16_t b) { return (uint32_t)a * b; }
F int16_t negate8(uint8_t a) { return -a; }
F uint16_t negate16(uint16_t a) { return -a; }
F uint32_t negate_wide(uint16_t a) { return -(uint32_t)a; }
F uint8_t shift_then_back(uint8_t a) { return a << 1 >> 1; }
F uint8_t shift_narrow_back(uint8_t a) { return (uint8_t)(a << 1) >> 1; }
F int32_t sign_into_wide(int8_t a) { return a; }
F uint32_t sign_into_unsigned(int8_t a) { return a; }
F uint32_t zero_into_unsigned(int8_t a) { return (uint8_t)a; }
F int16_t choose(bool c, int8_t a, uint8_t b) { return c ? a : b; }
F uint32_t choose_wide(bool c, int16_t a, uint32_t b) { return c ? a : b; }
F int32_t choose_16(bool c, int16_t a, uint16_t b) { return c ? a : b; }
F uint8_t compound(uint8_t a, int16_t b) { a += b; a *= 3; a >>= 1; return a; }
F int8_t compound_signed(int8_t a) { a += 100; a /= 3; return a; }

int main(void)
{
    R(not8(0x0F));
    R(not8_narrow(0x0F));
    R(not_equal(0xF0, 0x0F));
    R(not_equal_cast(0xF0, 0x0F));
    R(add8(200, 100));
    R(add8_narrow(200, 100));
    R(mean(200, 100));
    R(mean_narrow(200, 100));
    R(sub_negative(3, 5));
    R(sub16_negative(3, 5));
    R(mixed16(-1, 1));
    R(mixed8(-1, 1));
    R(mixed8_16(-1, 1));
    R(mixed32(-1, 1));
    R(wide_signed(65535u, -1));
    R(wide_from_16(65535u, 2));
    R(wide_cast(65535u, 2));
    R(mul16(300, 300));
    R(mul16_wide(300, 300));
    R(negate8(5));
    R(negate16(5));
    R(negate_wide(5));
    R(shift_then_back(0xC1));
    R(shift_narrow_back(0xC1));
    R(sign_into_wide(-3));
    R(sign_into_unsigned(-3));
    R(zero_into_unsigned(-3));
    R(choose(true, -7, 200));
    R(choose(false, -7, 200));
    R(choose_wide(true, -7, 1));
    R(choose_16(true, -7, 1));
    R(compound(250, 10));
    R(compound(7, -9));
    R(compound_signed(60));
    R(sizeof(int));
    R(sizeof(long));
    R(sizeof('a'));
    R(sizeof(void *));
    R(sizeof(1 ? (uint8_t)1 : (uint8_t)2));
    R(sizeof(1 + 1L));
    R('\xff' < 0);
    R(-1 / 2 + 5 % -3);
    R(40000 > 0);
    R(0x8000 < 0);
    R(0x8000 - 1 > 0);
    R(-32768 < 0);
    END();
}
