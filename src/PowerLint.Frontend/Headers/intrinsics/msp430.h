/* Handlers: the attribute's argument is a vector that the parser rejects, so it is kept as a note in the tree. */
#define interrupt(...) annotate("isr:" #__VA_ARGS__)
#define __interrupt__(...) annotate("isr:" #__VA_ARGS__)
#define __interrupt __attribute__((annotate("isr:")))

void __delay_cycles(unsigned long);
void __no_operation(void);
void __nop(void);
void __enable_interrupt(void);
void __disable_interrupt(void);
void __eint(void);
void __dint(void);
void __bis_SR_register(unsigned int);
void __bic_SR_register(unsigned int);
void __bis_SR_register_on_exit(unsigned int);
void __bic_SR_register_on_exit(unsigned int);
void __low_power_mode_0(void);
void __low_power_mode_1(void);
void __low_power_mode_2(void);
void __low_power_mode_3(void);
void __low_power_mode_4(void);
void __low_power_mode_off_on_exit(void);
unsigned int __get_SR_register(void);
unsigned int __get_SR_register_on_exit(void);
unsigned int __get_interrupt_state(void);
void __set_interrupt_state(unsigned int);
unsigned int __get_SP_register(void);
void __set_SP_register(unsigned int);
unsigned int __even_in_range(unsigned int, unsigned int);
unsigned int __swap_bytes(unsigned int);
unsigned int __bcd_add_short(unsigned int, unsigned int);
unsigned long __bcd_add_long(unsigned long, unsigned long);
void __op_code(unsigned int);
void __data20_write_char(unsigned long, unsigned char);
unsigned char __data20_read_char(unsigned long);
