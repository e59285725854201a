// Type punning, copies, nested and packed structures, arrays of structures, compound literals, flexible arrays.
#include "result.h"

union word { uint32_t word; uint16_t half[2]; uint8_t byte[4]; int8_t sbyte[4]; struct { uint8_t a; uint16_t b; uint8_t c; } parts; };
struct point { int8_t x, y; };
struct line { struct point from, to; const char *name; };
struct inner { uint8_t a[3]; uint16_t b; };
struct outer { uint8_t head; struct inner in[2]; union { uint16_t w; uint8_t c[2]; }; uint8_t tail; };
struct packet { uint8_t length; uint8_t data[]; };

F uint8_t byte_of(uint32_t w, uint8_t i) { union word u; u.word = w; return u.byte[i]; }
F uint16_t half_of(uint32_t w, uint8_t i) { union word u = {w}; return u.half[i]; }
F int16_t sbyte_of(uint32_t w, uint8_t i) { union word u = {.word = w}; return u.sbyte[i]; }
F uint16_t middle(uint32_t w) { union word u = {w}; return u.parts.b; }
F uint32_t change(uint32_t w) { union word u = {w}; u.half[0] += 0x8000; u.byte[3] ^= 0xFF; return u.word; }
F uint32_t floats(float f) { union { float f; uint32_t w; } u = {f}; return u.w; }
F struct point swap(struct point p) { struct point q = {p.y, p.x}; return q; }
F int16_t length(struct line l) { return (l.to.x - l.from.x) + (l.to.y - l.from.y); }
F int16_t copy_is_apart(void) { struct point a = {1, 2}, b = a; b.x = 50; a.y = 9; return a.x * 1000 + a.y * 100 + b.x + b.y; }
F int16_t by_pointer(struct point *p) { p->x += 5; (*p).y -= 3; return p->x * p->y; }
F uint16_t offsets(void) { return offsetof(struct outer, in[1].b) * 100 + offsetof(struct outer, tail) * 10 + sizeof(struct inner); }
F uint16_t nested(uint8_t i, uint8_t j) { struct outer o = {.head = 1, .in = {[1] = {.a = {7, 8, 9}, .b = 500}, [0].a[2] = 4}, .tail = 3}; o.w = 0x1234; return o.in[i].a[j] + o.in[i].b + o.c[1] + o.tail; }
F uint8_t literal(uint8_t n) { return ((struct inner){.a = {n, n + 1}, .b = n}).a[1]; }
F uint8_t literal_array(uint8_t i) { return (const uint8_t[]){5, 10, 20, 40}[i]; }
F uint8_t flexible(uint8_t *memory) { struct packet *p = (struct packet *)memory; uint8_t s = 0; for (uint8_t i = 0; i < p->length; i++) s += p->data[i]; return s; }
F uint8_t array_of(uint8_t i) { static const struct point points[] = {{1, 2}, {3, 4}, {5, -6}, [5] = {7}}; return points[i].x * 16 + points[i].y; }
F uint8_t count(void) { static const struct point points[] = {{1, 2}, [5] = {7}}; return sizeof points / sizeof *points; }
F int16_t assign_all(void) { struct line a = {{1, 2}, {3, 4}, "ab"}, b; b = a; b.to = (struct point){9, 9}; a.from = b.to; return length(a) * 100 + length(b) + b.name[1]; }
F uint8_t compare(void) { struct inner a = {{1, 2, 3}, 4}, b = {{1, 2, 3}, 4}; uint8_t same = memcmp(&a, &b, sizeof a) == 0; b.b++; return same * 2 + (memcmp(&a, &b, sizeof a) != 0); }
F uint8_t zeroed(void) { struct outer o = {0}; uint8_t s = 0; for (uint8_t *p = (uint8_t *)&o; p < (uint8_t *)(&o + 1); p++) s |= *p; return s; }
F uint16_t endian(uint16_t n) { const uint8_t *p = (const uint8_t *)&n; return p[0] << 8 | p[1]; }
F uint16_t anonymous(uint16_t n) { struct { union { uint16_t w; struct { uint8_t l, h; }; }; } s = {.w = n}; return s.h * 2 + s.l; }

int main(void)
{
    struct point p = {3, 10};
    uint8_t memory[] = {3, 10, 20, 30, 40};
    R(byte_of(0x12345678, 0));
    R(byte_of(0x12345678, 3));
    R(half_of(0x12345678, 1));
    R(sbyte_of(0x1234F678, 1));
    R(middle(0x12345678));
    R(change(0x12349678));
    R(floats(1.5f));
    R(swap(p).x);
    R(length((struct line){{1, 1}, {4, 9}, 0}));
    R(copy_is_apart());
    R(by_pointer(&p));
    R(p.x);
    R(p.y);
    R(offsets());
    R(nested(0, 2));
    R(nested(1, 1));
    R(literal(6));
    R(literal_array(2));
    R(flexible(memory));
    R(array_of(2));
    R(array_of(5));
    R(array_of(4));
    R(count());
    R(assign_all());
    R(compare());
    R(zeroed());
    R(endian(0x1234));
    R(anonymous(0x0305));
    R(sizeof(struct outer));
    R(sizeof(union word));
    END();
}
