// A machine of three states over a table of functions, each with its own pins; the table's type has a name and a self-reference.
#include "part.h"

struct state;
typedef const struct state *(*step)(uint32_t *budget);
struct state {
    step run;
    uint32_t pins;
};

static const struct state *measure(uint32_t *budget);
static const struct state *report(uint32_t *budget);
static const struct state *rest(uint32_t *budget);

static const struct state states[] = {{measure, 0x01}, {report, 0x02}, {rest, 0x04}};

static const struct state *measure(uint32_t *budget)
{
    (void)budget;
    GPIOA->BSRR = states[0].pins;
    return &states[1];
}

static const struct state *report(uint32_t *budget)
{
    GPIOA->BSRR = states[1].pins;
    GPIOA->BRR = states[0].pins;
    return --*budget ? &states[0] : &states[2];
}

static const struct state *rest(uint32_t *budget)
{
    *budget = 2;
    GPIOA->BRR = states[1].pins;
    GPIOA->BSRR = states[2].pins;
    wait_for_interrupt(); // state: GPIOA_ODR = 0b100
    GPIOA->BRR = states[2].pins;
    return &states[0];
}

void EXTI_IRQHandler(void) { EXTI->PR = 1; }

int main(void)
{
    const struct state *now = states;
    uint32_t budget = 1;

    IOPENR = IOPENR_A;
    GPIOA->ODR = 0;
    EXTI->IMR = 1;
    NVIC_ISER = 1u << IRQ_EXTI;
    for (;;)
        now = now->run(&budget);
}
