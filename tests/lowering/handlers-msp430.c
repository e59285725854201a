// flags: msp430-gcc -mmcu=msp430f2012
// An attribute with the vector, a keyword behind a pragma, registers that are symbols.
extern volatile unsigned char P1IFG __asm__("__P1IFG");
#define PORT1_VECTOR (2 * 2u)
#pragma vector=PORT1_VECTOR
__interrupt void port1(void) { P1IFG = 0; __bic_SR_register_on_exit(0xD0); }
void __attribute__((interrupt(PORT1_VECTOR))) timer(void) { }
void plain(void) { __bis_SR_register(0xD8); __delay_cycles(100); }
// expect: global extern volatile P1IFG : u8
// expect: function port1() : void handles PORT1_VECTOR
// expect:   u8![&P1IFG] = 0:u8
// expect:   call:void __bic_SR_register_on_exit(208:u16)
// expect: function timer() : void handles PORT1_VECTOR
// expect: function plain() : void
// expect:   call:void __bis_SR_register(216:u16)
// expect:   call:void __delay_cycles(100:u32)
