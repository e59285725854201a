// flags: arm-none-eabi-gcc -mcpu=cortex-m3 -mthumb
// Handlers go by their names; a weak alias is a call of its target.
__attribute__((weak)) void Default_Handler(void) { for (;;) ; }
void TIM2_IRQHandler(void) __attribute__((weak, alias("Default_Handler")));
volatile unsigned ticks;
void SysTick_Handler(void) { ticks++; }
void EXTI0_IRQHandler(void) { *(volatile unsigned *)0x40010414 = 1; }
void HandlerOfNothing(void) { }
// expect: global volatile ticks : u32
// expect: function weak Default_Handler() : void
// expect:   loop {
// expect:   }
// expect: function weak TIM2_IRQHandler() : void handles TIM2_IRQHandler
// expect:   call:void Default_Handler()
// expect: function SysTick_Handler() : void handles SysTick_Handler
// expect:   u32![&ticks] += 1:u32 in u32 (old)
// expect: function EXTI0_IRQHandler() : void handles EXTI0_IRQHandler
// expect:   u32![0x40010414] = 1:u32
// expect: function HandlerOfNothing() : void
