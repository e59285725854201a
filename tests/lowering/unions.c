// flags: -mmcu=atmega328p
// Unnamed members, to any depth.
typedef union {
    unsigned int word;
    unsigned char bytes[2];
    struct { unsigned char low, high; };
} both;
struct outer {
    unsigned char head;
    union { unsigned char one; struct { unsigned char two, three; struct { unsigned char four; }; }; };
} outer = { 1, { .three = 3 } }, other = { .four = 4 };
unsigned char f(both *p, unsigned n)
{
    both b = { n };
    b.bytes[1] = 2;
    p->high = b.low;
    outer.three = outer.four;
    return ((both){ .word = 0x1234 }).bytes[1] + outer.one;
}
// expect: global outer : [4] = { +0: 1:u8, +2: 3:u8 }
// expect: global other : [4] = { +3: 4:u8 }
// expect: function f(p : p16, n : u16) : u8
// expect:   local b : [2] = { +0: u16[&n] }
// expect:   u8[(&b + 1)] = 2:u8
// expect:   u8[(p16[&p] + 1)] = u8[&b]
// expect:   u8[(&outer + 2)] = u8[(&outer + 3)]
// expect:   return u8((i16(u8[((temporary <literal 1> : [2] = { +0: 4660:u16 }) + 1)]) + i16(u8[(&outer + 1)])))
