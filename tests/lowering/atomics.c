// flags: -mmcu=atmega328p
#include <stdatomic.h>
atomic_uint count;
_Atomic unsigned char plain;
unsigned char shared;
unsigned f(void)
{
    atomic_fetch_add(&count, 2);
    atomic_store(&count, 4u);
    plain |= 3;
    return atomic_load(&count) + __atomic_sub_fetch(&shared, 1, __ATOMIC_RELAXED);
}
// expect: global count : u16
// expect: global plain : u8
// expect: global shared : u8
// expect: function f() : u16
// expect:   u16![&count] += 2:u16 in u16 (old)
// expect:   u16![&count] = 4:u16
// expect:   u8[&plain] |= 3:i16 in i16
// expect:   return (u16![&count] + u16((u8![&shared] -= 1:i16 in i16)))
