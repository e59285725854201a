// Bit-fields: signed, unsigned, across bytes, unnamed, in arrays and unions.
#include "result.h"

struct status { uint8_t ready : 1; uint8_t mode : 3; uint8_t level : 4; };
struct signs { int8_t a : 3; int8_t b : 5; int8_t c : 1; };
struct crossing { uint8_t low : 3, mid : 7, high : 6; };
struct wide { uint16_t a : 12; uint8_t b : 6; uint16_t c : 14; };
struct gaps { uint8_t a : 2; uint8_t : 3; uint8_t b : 2; uint8_t : 0; uint8_t c : 4; };
struct mixed { int16_t s : 5; uint16_t t : 9; int8_t : 0; int8_t q : 2; uint8_t w; };
struct longer { uint32_t a : 20; uint32_t b : 12; };
struct flags { bool on : 1; bool off : 1; uint8_t n : 6; };
union view { struct status bits; uint8_t byte; };

F uint8_t make(uint8_t ready, uint8_t mode, uint8_t level) { union view v = {{ready, mode, level}}; return v.byte; }
F uint8_t truncate(uint16_t n) { struct status s = {0}; s.ready = n; s.mode = n; return s.ready << 4 | s.mode; }
F uint8_t one_bit(uint8_t n) { struct status s; s.ready = n; return s.ready; }
F uint8_t neighbour(uint8_t byte) { union view v; v.byte = byte; return v.bits.ready * 100 + v.bits.mode * 10 + v.bits.level; }
F int16_t signed_fields(int8_t a, int8_t b, int8_t c) { struct signs s = {a, b, c}; return s.a * 1000 + s.b * 10 + s.c; }
F uint16_t cross(uint8_t low, uint8_t mid, uint8_t high) { struct crossing c = {low, mid, high}; uint16_t r; memcpy(&r, &c, sizeof r); return r; }
F uint16_t cross_mid(uint16_t raw) { struct crossing c; memcpy(&c, &raw, sizeof raw); return c.mid; }
F uint32_t wide_raw(uint16_t a, uint8_t b, uint16_t c) { struct wide w = {a, b, c}; uint32_t r; memcpy(&r, &w, sizeof r); return r; }
F uint16_t wide_sum(uint32_t raw) { struct wide w = {0}; memcpy(&w, &raw, sizeof raw); return w.a + w.b + w.c; }
F uint16_t gap_raw(uint8_t a, uint8_t b, uint8_t c) { struct gaps g; memset(&g, 0, sizeof g); g.a = a; g.b = b; g.c = c; uint16_t r = 0; memcpy(&r, &g, sizeof g); return r; }
F uint32_t mixed_raw(int16_t s, uint16_t t, int8_t q, uint8_t w) { struct mixed m; memset(&m, 0, sizeof m); m.s = s; m.t = t; m.q = q; m.w = w; uint32_t r; memcpy(&r, &m, sizeof r); return r; }
F int16_t mixed_read(int16_t s, int8_t q) { struct mixed m = {s, 0, q, 0}; return m.s - m.q; }
F uint32_t longer_sum(uint32_t a, uint16_t b) { struct longer l = {a, b}; l.a += 5; l.b -= 1; return (uint32_t)l.a * 2 + l.b; }
F uint8_t increment(uint8_t n) { struct status s = {1, 7, 15}; s.mode++; s.level += n; --s.ready; return s.ready << 7 | s.mode << 4 | s.level; }
F uint8_t assign_value(uint8_t n) { struct status s; uint8_t r = (s.mode = n); return r; }
F uint8_t boolean(uint8_t n) { struct flags f = {n, !n, n}; return f.on * 128 + f.off * 64 + f.n; }
F int16_t promote(uint8_t n) { struct status s = {0, n, 0}; return ~s.mode; }
F bool compare(uint8_t n) { struct status s = {n, n, n}; return s.ready - 2 < 0; }
F uint8_t in_array(uint8_t i) { struct status a[3] = {{1, 2, 3}, {0, 5, 6}, {1, 7, 9}}; a[i].level ^= 5; return a[i].level * 10 + a[i].mode; }
F uint8_t through_pointer(struct status *s) { s->ready ^= 1; s->level = s->mode + 1; return s->level; }

int main(void)
{
    struct status s = {.mode = 6};
    R(make(1, 5, 9));
    R(make(2, 9, 17));
    R(truncate(0x1D));
    R(one_bit(2));
    R(one_bit(3));
    R(neighbour(0x59));
    R(neighbour(0x58));
    R(signed_fields(3, -16, -1));
    R(signed_fields(4, 15, 1));
    R(sizeof(struct status));
    R(sizeof(struct signs));
    R(sizeof(struct crossing));
    R(sizeof(struct wide));
    R(sizeof(struct gaps));
    R(sizeof(struct mixed));
    R(sizeof(struct longer));
    R(cross(5, 0x55, 0x2A));
    R(cross_mid(0xAAAD));
    R(wide_raw(0xABC, 0x2D, 0x1234));
    R(wide_sum(0x48D2DABC));
    R(gap_raw(3, 2, 9));
    R(mixed_raw(-3, 0x155, 1, 7));
    R(mixed_read(-16, -2));
    R(longer_sum(0xFFFFE, 0));
    R(increment(3));
    R(assign_value(0x0D));
    R(boolean(2));
    R(boolean(0));
    R(promote(3));
    R(compare(1));
    R(in_array(1));
    R(in_array(2));
    R(through_pointer(&s));
    R(s.ready);
    END();
}
