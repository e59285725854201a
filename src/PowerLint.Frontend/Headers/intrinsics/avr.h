/* Address-space qualifiers: where an object lies does not matter to the analysis. */
#define __flash
#define __flash1
#define __flash2
#define __flash3
#define __flash4
#define __flash5
#define __memx
#define __flashx

/* What the cross compiler defines besides and headers ask for. */
#define __FLASH 1
#define __MEMX 1
#define __WITH_AVRLIBC__ 1
#define __AVR_HAVE_16BIT_SP__ 1
#define __AVR_HAVE_SPH__ 1
#define __BUILTIN_AVR_NOP 1
#define __BUILTIN_AVR_SEI 1
#define __BUILTIN_AVR_CLI 1
#define __BUILTIN_AVR_SLEEP 1
#define __BUILTIN_AVR_WDR 1
#define __BUILTIN_AVR_SWAP 1
#define __BUILTIN_AVR_DELAY_CYCLES 1
#define __BUILTIN_AVR_INSERT_BITS 1
#define __BUILTIN_AVR_FMUL 1
#define __BUILTIN_AVR_FMULS 1
#define __BUILTIN_AVR_FMULSU 1
#define __BUILTIN_AVR_FLASH_SEGMENT 1
#if __AVR_ARCH__ >= 100
#define __AVR_SFR_OFFSET__ 0x0
#else
#define __AVR_SFR_OFFSET__ 0x20
#endif
#if __AVR_ARCH__ == 3 || __AVR_ARCH__ == 31 || __AVR_ARCH__ == 35 || __AVR_ARCH__ == 5 || __AVR_ARCH__ == 51 \
    || __AVR_ARCH__ == 6 || __AVR_ARCH__ >= 102
#define __AVR_MEGA__ 1
#endif
#if __AVR_ARCH__ >= 4 && __AVR_ARCH__ != 25 && __AVR_ARCH__ != 31 && __AVR_ARCH__ != 35 && __AVR_ARCH__ != 100
#define __AVR_ENHANCED__ 1
#endif
#if __AVR_ARCH__ == 31 || __AVR_ARCH__ == 51 || __AVR_ARCH__ == 6 || __AVR_ARCH__ == 104 || __AVR_ARCH__ == 105 \
    || __AVR_ARCH__ == 106 || __AVR_ARCH__ == 107
#define __AVR_HAVE_RAMPZ__ 1
#define __FLASH1 1
#endif
#if __AVR_ARCH__ == 105 || __AVR_ARCH__ == 107
#define __AVR_HAVE_RAMPX__ 1
#define __AVR_HAVE_RAMPY__ 1
#define __AVR_HAVE_RAMPD__ 1
#endif
#if __AVR_ARCH__ == 6 || __AVR_ARCH__ == 106 || __AVR_ARCH__ == 107
#define __AVR_HAVE_EIJMP_EICALL__ 1
#define __AVR_3_BYTE_PC__ 1
#else
#define __AVR_2_BYTE_PC__ 1
#endif

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
