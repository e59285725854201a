// flags: -mmcu=atmega328p
// Braces may be left out; what is not given is zero; entries come in order.
struct inner { int a[2]; char b; };
struct outer { struct inner i; int c; } flat = { 1, 2, 3, 4 }, nested = { { { 1 }, 3 }, 4 };
struct outer many[2] = { 1, 2, 3, 4, 5 };
int grid[2][2] = { { 1 }, { 2, 3 } }, loose[2][2] = { 1, 2, 3 };
int unsized[] = { 1, 2, 3 };
int scalar = { 5 };
char zeroed[4] = { 0 };
void f(int n, struct inner whole)
{
    struct outer copy = { whole, n };
    int local[3] = { n, n + 1 };
    struct inner empty = { };
    char c = { 'x' };
}
// expect: global flat : [7] = { +0: 1:i16, +2: 2:i16, +4: 3:i8, +5: 4:i16 }
// expect: global nested : [7] = { +0: 1:i16, +4: 3:i8, +5: 4:i16 }
// expect: global many : [14] = { +0: 1:i16, +2: 2:i16, +4: 3:i8, +5: 4:i16, +7: 5:i16 }
// expect: global grid : [8] = { +0: 1:i16, +4: 2:i16, +6: 3:i16 }
// expect: global loose : [8] = { +0: 1:i16, +2: 2:i16, +4: 3:i16 }
// expect: global unsized : [6] = { +0: 1:i16, +2: 2:i16, +4: 3:i16 }
// expect: global scalar : i16 = 5:i16
// expect: global zeroed : [4] = { +0: 0:i8 }
// expect: function f(n : i16, whole : [5]) : void
// expect:   local copy : [7] = { +0: [5][&whole], +5: i16[&n] }
// expect:   local local : [6] = { +0: i16[&n], +2: (i16[&n] + 1:i16) }
// expect:   local empty : [5] = {  }
// expect:   local c : i8 = 120:i8
