// flags: -mmcu=atmega328p
// A designator moves the place; what follows goes on from there (C11 6.7.9).
struct inner { int m[3][2]; unsigned char s; };
struct outer { int first; struct inner in; int last; };
struct outer a = { .in.m[1][0] = 4, 5, 6, .first = 1 };
struct outer b = { .in = { .s = 2 }, 3 };
int arr[6] = { [2] = 7, 8, [0] = 9 };
int ranged[] = { [1 ... 3] = 5, 6 };
struct inner rows[3] = { [1].s = 1, [2] = { .m = { [0][1] = 2 } } };
unsigned char table[20] = { [0 ... 9] = 0xFF, [12] = 1 };
struct old { int x, y; } old = { y: 2, x: 1 };
enum { RED, GREEN, BLUE };
const char *names[] = { [BLUE] = "b", [RED] = "r" };
struct outer twice = { .first = 1, .first = 2 };
// expect: global a : [17] = { +6: 4:i16, +8: 5:i16, +10: 6:i16, +0: 1:i16 }
// expect: global b : [17] = { +14: 2:u8, +15: 3:i16 }
// expect: global arr : [12] = { +4: 7:i16, +6: 8:i16, +0: 9:i16 }
// expect: global ranged : [10] = { +2: 5:i16, +4: 5:i16, +6: 5:i16, +8: 6:i16 }
// expect: global rows : [39] = { +25: 1:u8, +28: 2:i16 }
// expect: global table : [20] = { +0: bytes/1 ffffffffffffffffffff, +12: 1:u8 }
// expect: global old : [4] = { +2: 2:i16, +0: 1:i16 }
// expect: global names : [6] = { +4: &<string 1>, +0: &<string 2> }
// expect: global twice : [17] = { +0: 1:i16, +0: 2:i16 }
// expect: global static const <string 1> : [2] = { +0: bytes/1 6200 }
// expect: global static const <string 2> : [2] = { +0: bytes/1 7200 }
