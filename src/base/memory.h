/* Memory for the whole program. Running out is not an error that callers handle: the one hook is
 * called (it may restore a terminal and say a sentence) and the process ends with status 2. */
#ifndef BASE_MEMORY_H
#define BASE_MEMORY_H

#include <stdarg.h>
#include <stddef.h>

/* Sets what is called, once, when memory runs out; it should not return. NULL: a plain sentence
 * on standard error. */
void memory_on_exhaustion(void (*hook)(void));

/* From here on memory that is freed is kept for the next to come: on large plots each key takes and
 * frees hundreds of megabytes, and to have them from the system anew takes longer than to count
 * with them. */
void memory_keep(void);

/* A zeroed block for count things of the given size, to be passed to free(). Never NULL. */
void *memory_new(size_t count, size_t size);
/* realloc() for count things of the given size; the added part is not cleared. Never NULL. */
void *memory_resize(void *block, size_t count, size_t size);
/* What these blocks took of the heap so far, in bytes, its own share included. Nothing is taken off
 * for what was freed: two readings say what was taken between them. */
size_t memory_taken(void);
/* A copy of a string or of its first length bytes, to be passed to free(). */
char *memory_string(const char *text);
char *memory_bytes(const char *text, size_t length);

/* Room for one more thing after `count` of them: returns items, moved and *capacity doubled where
 * they are full. */
void *memory_grow(void *items, size_t count, size_t *capacity, size_t size);

/* An arena hands out zeroed memory that is freed all at once. Start from ARENA_EMPTY. */
struct arena {
	struct arena_chunk *newest;
};
#define ARENA_EMPTY ((struct arena){ NULL })

void *arena_new(struct arena *arena, size_t count, size_t size);
/* Like memory_grow, within the arena, for items that came from here. What is outgrown while small
 * stays until arena_clear; a large block is resized, and the part added is not cleared. */
void *arena_grow(struct arena *arena, void *items, size_t count, size_t *capacity, size_t size);
/* A formatted string in the arena. */
char *arena_print(struct arena *arena, const char *format, ...)
	__attribute__((format(printf, 2, 3)));
char *arena_vprint(struct arena *arena, const char *format, va_list list)
	__attribute__((format(printf, 2, 0)));
/* Frees everything; the arena is empty and may be used again. */
void arena_clear(struct arena *arena);

#endif
