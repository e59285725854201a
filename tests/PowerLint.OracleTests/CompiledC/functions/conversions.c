// Conversions between widths and signs, boolean conversion, enumerations, characters.
#include "result.h"

enum small { LOW = -1, ZERO, ONE, HIGH = 300 };
enum flags { A = 1 << 0, B = 1 << 3, C = 1 << 7, ALL = A | B | C };

F int8_t narrow(int16_t a) { return a; }
F uint8_t unarrow(int32_t a) { return a; }
F int16_t middle(uint32_t a) { return (int16_t)a; }
F bool truth(uint16_t a) { return a; }
F bool truth_masked(uint16_t a) { return a & 0x100; }
F uint8_t masked(uint16_t a) { return a & 0x100; }
F uint8_t twice_not(uint16_t a) { return !!(a & 0x100); }
F int16_t from_bool(bool a, bool b) { return a + b + a; }
F uint8_t bool_increment(uint8_t n) { bool b = n; b += 5; return b; }
F int16_t from_char(char c) { return c; }
F int16_t from_signed(signed char c) { return c; }
F int16_t from_unsigned(unsigned char c) { return c; }
F uint8_t upper(char c) { return c >= 'a' && c <= 'z' ? c - 'a' + 'A' : c; }
F int16_t digit(char c) { return c - '0'; }
F int16_t from_enum(enum small s) { return s * 2; }
F uint8_t has(enum flags f, enum flags g) { return (f & g) == g; }
F uint8_t number(const char *s) { uint8_t n = 0; while (*s >= '0' && *s <= '9') n = n * 10 + (*s++ - '0'); return n; }
F uint16_t pack(uint8_t high, uint8_t low) { return (uint16_t)high << 8 | low; }
F int16_t pack_wrong(int8_t high, int8_t low) { return high << 8 | low; }
F uint8_t assign_chain(uint16_t a) { uint16_t x; uint8_t y; x = y = a; return x == a; }
F int32_t through_narrow(int32_t a) { return (int8_t)(uint8_t)a; }
F uint32_t through_signed(uint8_t a) { return (uint32_t)(int32_t)(int16_t)(a << 8); }
F uint16_t pointer_bits(const void *p) { return (uint16_t)(uintptr_t)p & 0; }
F int16_t compare(uint8_t a, uint8_t b) { return (a > b) - (a < b); }
F uint8_t literal(void) { return 'A' + '\n' + '\101' + '\x0f'; }
F uint16_t multi(void) { return 'ab'; }
F int16_t generic(int16_t a) { return _Generic(a, char: 1, int: 2, long: 3, default: 4); }

int main(void)
{
    R(narrow(300));
    R(narrow(-300));
    R(narrow(128));
    R(unarrow(-1));
    R(unarrow(0x12345678L));
    R(middle(0xFFFF8001UL));
    R(truth(0x100));
    R(truth_masked(0x300));
    R(masked(0x300));
    R(twice_not(0x300));
    R(from_bool(true, 7));
    R(bool_increment(0));
    R(bool_increment(255));
    R(from_char('\x80'));
    R(from_signed((signed char)0x80));
    R(from_unsigned(0x80));
    R(upper('q'));
    R(upper('Q'));
    R(digit('7'));
    R(from_enum(LOW));
    R(from_enum(HIGH));
    R(has(ALL, B));
    R(has(A, B));
    R(number("217x"));
    R(pack(0x81, 0x82));
    R(pack_wrong(1, -1));
    R(assign_chain(300));
    R(assign_chain(200));
    R(through_narrow(0x1234F0));
    R(through_signed(0x81));
    R(pointer_bits("x"));
    R(compare(3, 200));
    R(compare(200, 3));
    R(literal());
    R(multi());
    R(generic(1));
    R((uint8_t)-1 == 255);
    R((int8_t)255 == -1);
    R((char)200 == 200);
    R((bool)0x100);
    R((bool)0.25);
    R((uint8_t)3.99);
    R((int16_t)-2.5);
    END();
}
