// flags: -mmcu=atmega328p
struct point { int x; unsigned char y; };
struct line { struct point from, to; };
static struct point make(int x) { struct point p = { x, 2 }; return p; }
static int sum(struct point p) { return p.x + p.y; }
void f(struct line *l, int n)
{
    struct point a, b;
    a = b;
    l->to = a;
    l->to.y = l->from.y;
    a = make(3);
    n = sum(a) + sum(make(4)) + make(5).x;
    a = n ? a : b;
    struct line copy = *l;
    copy.from = (struct point){ .y = 1 };
}
// expect: function static make(x : i16) : [3]
// expect:   local p : [3] = { +0: i16[&x], +2: 2:u8 }
// expect:   return [3][&p]
// expect: function static sum(p : [3]) : i16
// expect:   return (i16[&p] + i16(u8[(&p + 2)]))
// expect: function f(l : p16, n : i16) : void
// expect:   local a : [3]
// expect:   local b : [3]
// expect:   [3][&a] = [3][&b]
// expect:   [3][(p16[&l] + 3)] = [3][&a]
// expect:   u8[(p16[&l] + 5)] = u8[(p16[&l] + 2)]
// expect:   [3][&a] = call:[3] make(3:i16)
// expect:   i16[&n] = ((call:i16 sum([3][&a]) + call:i16 sum(call:[3] make(4:i16))) + i16[(temporary <temporary 1> : [3] = call:[3] make(5:i16))])
// expect:   [3][&a] = (i16[&n] ? [3][&a] : [3][&b])
// expect:   local copy : [6] = [6][p16[&l]]
// expect:   [3][&copy] = [3][(temporary <literal 2> : [3] = { +2: 1:u8 })]
