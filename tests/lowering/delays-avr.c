// flags: -mmcu=atmega328p -DF_CPU=8000000UL
// needs: avr-gcc
#include <util/delay.h>
int main(void)
{
    _delay_ms(10);
    _delay_us(50);
}
// expect: function static _delay_ms(__ms : f32) : void
// expect:   local __tmp : f32
// expect:   local __ticks_dc : u32
// expect:   f32[&__tmp] = (8000:f32 * f32[&__ms])
// expect:   u32[&__ticks_dc] = u32(call:f32 ceil(call:f32 fabs(f32[&__tmp])))
// expect:   call:void __builtin_avr_delay_cycles(u32[&__ticks_dc])
// expect: function static _delay_us(__us : f32) : void
// expect:   local __tmp : f32
// expect:   local __ticks_dc : u32
// expect:   f32[&__tmp] = (8:f32 * f32[&__us])
// expect:   u32[&__ticks_dc] = u32(call:f32 ceil(call:f32 fabs(f32[&__tmp])))
// expect:   call:void __builtin_avr_delay_cycles(u32[&__ticks_dc])
// expect: function main() : i16
// expect:   call:void _delay_ms(10:f32)
// expect:   call:void _delay_us(50:f32)
