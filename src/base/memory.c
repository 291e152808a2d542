#include "base/memory.h"

#include <malloc.h>
#include <stdarg.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { CHUNK_BYTES = 64 * 1024 };

struct arena_chunk {
	struct arena_chunk *older, *newer;
	size_t used, size;
	max_align_t bytes[];
};

static void (*exhaustion_hook)(void);
static size_t taken;

void memory_on_exhaustion(void (*hook)(void))
{
	exhaustion_hook = hook;
}

static void exhausted(void)
{
	if (exhaustion_hook)
		exhaustion_hook();
	else
		fputs("parterre: out of memory\n", stderr);
	_Exit(2);
}

static size_t product(size_t count, size_t size)
{
	if (size && count > SIZE_MAX / size)
		exhausted();
	return count * size;
}

/* The heap keeps a word of its own with each block. */
static size_t heap_bytes(void *block)
{
	return block ? malloc_usable_size(block) + sizeof(size_t) : 0;
}

size_t memory_taken(void)
{
	return taken;
}

void *memory_new(size_t count, size_t size)
{
	void *block = calloc(count ? count : 1, size ? size : 1);

	if (!block)
		exhausted();
	taken += heap_bytes(block);
	return block;
}

void *memory_resize(void *block, size_t count, size_t size)
{
	size_t bytes = product(count, size), before = heap_bytes(block);
	void *moved = realloc(block, bytes ? bytes : 1);

	if (!moved)
		exhausted();
	taken += heap_bytes(moved) - before;
	return moved;
}

char *memory_bytes(const char *text, size_t length)
{
	char *copy = memory_new(length + 1, 1);

	if (length)
		memcpy(copy, text, length);
	return copy;
}

char *memory_string(const char *text)
{
	return memory_bytes(text, strlen(text));
}

void *memory_grow(void *items, size_t count, size_t *capacity, size_t size)
{
	if (count < *capacity)
		return items;
	*capacity = *capacity ? *capacity * 2 : 16;
	return memory_resize(items, *capacity, size);
}

/* What so many things take in an arena. */
static size_t arena_bytes(size_t count, size_t size)
{
	size_t unit = _Alignof(max_align_t), bytes = product(count, size);

	if (bytes > SIZE_MAX / 2)
		exhausted();
	return (bytes + unit - 1) / unit * unit;
}

/* The neighbours of a chunk point to it, wherever it has moved. */
static void chunk_link(struct arena *arena, struct arena_chunk *chunk)
{
	if (chunk->older)
		chunk->older->newer = chunk;
	*(chunk->newer ? &chunk->newer->older : &arena->newest) = chunk;
}

/* Clears only what is handed out: many an arena lives for a few small blocks. */
static void *chunk_take(struct arena_chunk *chunk, size_t bytes)
{
	void *block = (char *)chunk->bytes + chunk->used;

	chunk->used += bytes;
	return memset(block, 0, bytes);
}

static void chunk_add(struct arena *arena)
{
	struct arena_chunk *chunk = memory_resize(NULL, 1, sizeof *chunk + CHUNK_BYTES);

	*chunk = (struct arena_chunk){ .older = arena->newest, .size = CHUNK_BYTES };
	chunk_link(arena, chunk);
}

/* A large block has a chunk to itself, next to the newest: that one is still being filled. The
 * system gives it cleared, page by page as it is used. */
static void *large_new(struct arena *arena, size_t bytes)
{
	struct arena_chunk *chunk = memory_new(1, sizeof *chunk + bytes);

	chunk->used = chunk->size = bytes;
	chunk->newer = arena->newest;
	chunk->older = chunk->newer ? chunk->newer->older : NULL;
	chunk_link(arena, chunk);
	return chunk->bytes;
}

static void *large_grow(struct arena *arena, void *block, size_t bytes)
{
	struct arena_chunk *chunk = (struct arena_chunk *)(void *)((char *)block -
		offsetof(struct arena_chunk, bytes));

	chunk = memory_resize(chunk, 1, sizeof *chunk + bytes);
	chunk->used = chunk->size = bytes;
	chunk_link(arena, chunk);
	return chunk->bytes;
}

void *arena_new(struct arena *arena, size_t count, size_t size)
{
	size_t bytes = arena_bytes(count, size);

	if (bytes > CHUNK_BYTES)
		return large_new(arena, bytes);
	if (!arena->newest || arena->newest->size - arena->newest->used < bytes)
		chunk_add(arena);
	return chunk_take(arena->newest, bytes);
}

void *arena_grow(struct arena *arena, void *items, size_t count, size_t *capacity, size_t size)
{
	size_t before = *capacity;
	void *moved;

	if (count < before)
		return items;
	*capacity = before ? before * 2 : 16;
	if (arena_bytes(before, size) > CHUNK_BYTES)
		return large_grow(arena, items, arena_bytes(*capacity, size));
	moved = arena_new(arena, *capacity, size);
	if (count)
		memcpy(moved, items, count * size);
	return moved;
}

char *arena_vprint(struct arena *arena, const char *format, va_list list)
{
	va_list again;
	size_t size;
	char *text;

	va_copy(again, list);
	size = (size_t)vsnprintf(NULL, 0, format, again) + 1;
	va_end(again);
	text = arena_new(arena, size, 1);
	vsnprintf(text, size, format, list);
	return text;
}

char *arena_print(struct arena *arena, const char *format, ...)
{
	va_list list;
	char *text;

	va_start(list, format);
	text = arena_vprint(arena, format, list);
	va_end(list);
	return text;
}

void arena_clear(struct arena *arena)
{
	while (arena->newest) {
		struct arena_chunk *older = arena->newest->older;

		free(arena->newest);
		arena->newest = older;
	}
}

enum { KEPT_MOST = 1 << 30 };

void memory_keep(void)
{
#ifdef __GLIBC__
	mallopt(M_MMAP_THRESHOLD, KEPT_MOST);
	mallopt(M_TRIM_THRESHOLD, KEPT_MOST);
#endif
}
