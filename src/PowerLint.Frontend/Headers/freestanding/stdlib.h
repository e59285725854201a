/* Declarations only: enough to parse firmware where no C library is installed. */
#pragma once
#pragma GCC system_header
#include <stddef.h>
#define EXIT_SUCCESS 0
#define EXIT_FAILURE 1
#define RAND_MAX 0x7FFF
_Noreturn void abort(void);
_Noreturn void exit(int);
int abs(int);
long labs(long);
int atoi(const char *);
long atol(const char *);
void *calloc(size_t, size_t);
void free(void *);
void *malloc(size_t);
void *realloc(void *, size_t);
int rand(void);
void srand(unsigned int);
long strtol(const char *, char **, int);
unsigned long strtoul(const char *, char **, int);
