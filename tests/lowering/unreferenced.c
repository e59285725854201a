// flags: -mmcu=atmega328p
// Static functions are lowered only where something that is kept mentions them.
static void never(void) { }
static inline void also_never(void) { never(); }
static inline int helper(int n) { return n + 1; }
static void taken(void) { }
inline int inline_only(int n) { return n; }
extern inline int inline_and_extern(int n) { return helper(n); }
void (*pointer)(void) = taken;
// expect: global pointer : p16 = &taken
// expect: function static helper(n : i16) : i16
// expect:   return (i16[&n] + 1:i16)
// expect: function static taken() : void
// expect: function inline_and_extern(n : i16) : i16
// expect:   return call:i16 helper(i16[&n])
