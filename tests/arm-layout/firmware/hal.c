// files: driver.c
// Pins, clocks and a timer set up through the driver layer come out exact; the strong definitions of the image win.
#include "driver.h"

static ticker blink;

void ticker_attach(ticker *self)
{
    if (self->timer == TIM2) {
        APBENR |= APBENR_TIM2;
        NVIC_ISER = 1u << IRQ_TIM2;
    }
}

static void toggle(ticker *self)
{
    (void)self;
    static uint8_t on;
    on ^= 1;
    pins_write(GPIOA, 1u << 5, on);
}

void TIM2_IRQHandler(void) { ticker_interrupt(&blink); }

void board_setup(void)
{
    pin_settings settings = {0};

    IOPENR |= IOPENR_A | IOPENR_B;
    pins_write(GPIOA, (1u << 5) | (1u << 6), 0);
    settings.pins = (1u << 5) | (1u << 6);
    settings.mode = PIN_OUTPUT;
    settings.speed = 2;
    pins_setup(GPIOA, &settings);

    settings.pins = (1u << 2) | (1u << 3) | (1u << 9);
    settings.mode = PIN_ALTERNATE;
    settings.pull = PULL_UP;
    settings.alternate = 4;
    pins_setup(GPIOA, &settings);

    settings = (pin_settings){.pins = 1u << 0, .mode = PIN_INPUT | PIN_EDGE, .pull = PULL_DOWN};
    pins_setup(GPIOB, &settings);
}

int main(void)
{
    SYST->RVR = 3999;
    SYST->CSR = 7;
    board_setup();
    if (wait_for_bits(&GPIOB->IDR, 1u << 4, 20) != OUTCOME_OK)
        pins_write(GPIOA, 1u << 6, 1);

    blink.timer = TIM2;
    blink.elapsed = toggle;
    ticker_start(&blink);
    for (int i = 0; i < 1; i++)
        wait_for_interrupt(); // state: GPIOA_ODR.OD5 = 0b?, GPIOA_MODER = 0xFFFBD7AF, RCC_APBENR = 1, TIM2_CR.CEN = 1, SCB_SCR = 0, NVIC_ENABLED = 0x8000

    ticker_stop(&blink);
    SYST->CSR &= ~1u;
    pins_write(GPIOA, (1u << 5) | (1u << 6), 0);
    pins_release(GPIOA, (1u << 2) | (1u << 3) | (1u << 9));
    APBENR &= ~APBENR_TIM2;
    APBENR |= APBENR_PWR;
    PWR_CR |= 1u;
    APBENR &= ~APBENR_PWR;
    NVIC_ISER = 1u << IRQ_EXTI;
    SCB_SCR |= SCR_SLEEPDEEP;
    for (;;) {
        barrier();
        wait_for_interrupt(); // state: GPIOA_MODER = 0xFFFFD7FF, GPIOA_PUPDR = 0, GPIOA_OSPEEDR = 0x000828A0, GPIOA_AFRL = 0x00004400, GPIOA_AFRH = 0x00000040, GPIOA_ODR = 0, GPIOB_MODER = 0xFFFFFFFC, GPIOB_PUPDR = 2, EXTI_IMR = 1, RCC_IOPENR = 3, RCC_APBENR = 0, PWR_CR = 1, TIM2_DIER = 0, TIM2_CR = 0, SCB_SCR = 4
    }
}

void EXTI_IRQHandler(void) { EXTI->PR = 1; }
