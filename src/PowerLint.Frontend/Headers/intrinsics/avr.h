/* Address-space qualifiers: where an object lies does not matter to the analysis. */
#define __flash
#define __flash1
#define __flash2
#define __flash3
#define __flash4
#define __flash5
#define __memx
#define __flashx

void __builtin_avr_delay_cycles(unsigned long);
void __builtin_avr_nops(unsigned int);
void __builtin_avr_nop(void);
void __builtin_avr_sei(void);
void __builtin_avr_cli(void);
void __builtin_avr_sleep(void);
void __builtin_avr_wdr(void);
unsigned char __builtin_avr_swap(unsigned char);
unsigned int __builtin_avr_fmul(unsigned char, unsigned char);
int __builtin_avr_fmuls(signed char, signed char);
int __builtin_avr_fmulsu(signed char, unsigned char);
unsigned char __builtin_avr_insert_bits(unsigned long, unsigned char, unsigned char);
signed char __builtin_avr_flash_segment(const void *);

#if defined(__AVR_ARCH__) && __AVR_ARCH__ >= 102 && !defined(__AVR_XMEGA__)
#define __AVR_XMEGA__ 1
#endif
