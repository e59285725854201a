// flags: -mmcu=atmega328p
// Sizes, offsets and alignments are constants of the target.
struct s { char a; int b; long c[3]; char d; } __attribute__((packed)) *p;
int sizes[] = {
    sizeof(char), sizeof(short), sizeof(int), sizeof(long), sizeof(long long), sizeof(void *), sizeof(float),
    sizeof(struct s), sizeof p->c, sizeof "abc", __builtin_offsetof(struct s, c[1]), _Alignof(long), sizeof(int[4]),
};
int f(int n) { return sizeof(n++) + sizeof n; }
// expect: global p : p16
// expect: global sizes : [26] = { +0: bytes/2 010002000200040008000200040010000c000400070001000800 }
// expect: function f(n : i16) : i16
// expect:   return 4:i16
