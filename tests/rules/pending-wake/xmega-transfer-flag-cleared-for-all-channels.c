// device: atxmega32e5
// The flags of all channels stand in one register, too.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t blocks;

ISR(EDMA_CH2_vect)
{
    EDMA.INTFLAGS = EDMA_CH2TRNFIF_bm | EDMA_CH2ERRIF_bm;
    blocks++;
}

int main(void)
{
    EDMA.CTRL = EDMA_ENABLE_bm;
    EDMA.CH2.TRFCNT = 64;
    EDMA.CH2.CTRLB = EDMA_CH_TRNINTLVL_LO_gc;
    EDMA.CH2.CTRLA = EDMA_CH_ENABLE_bm | EDMA_CH_REPEAT_bm | EDMA_CH_SINGLE_bm;
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    set_sleep_mode(SLEEP_SMODE_IDLE_gc);
    sei();
    for (;;) {
        sleep_mode(); // clean: pending-wake EDMA.CH2.CTRLB.TRNIF
    }
}
