/* Memory that never runs out quietly, and arenas. */
#include "base/memory.h"
#include "support/random.h"
#include "support/runner.h"

#include <stdalign.h>
#include <stdbool.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/wait.h>
#include <unistd.h>

static bool is_zero(const void *block, size_t size)
{
	const unsigned char *bytes = block;

	for (size_t i = 0; i < size; i++)
		if (bytes[i])
			return false;
	return true;
}

START_TEST(new_memory_is_zeroed_and_may_be_empty)
{
	char *block = memory_new(1000, 7);
	void *nothing = memory_new(0, 8);

	ck_assert(is_zero(block, 7000));
	ck_assert_ptr_nonnull(nothing);
	free(block);
	free(nothing);
}
END_TEST

START_TEST(resized_memory_keeps_what_it_held)
{
	char *block = memory_resize(NULL, 4, 1);

	memcpy(block, "abc", 4);
	block = memory_resize(block, 100000, 1);
	ck_assert_str_eq(block, "abc");
	block = memory_resize(block, 0, 1);
	ck_assert_ptr_nonnull(block);
	free(block);
}
END_TEST

START_TEST(strings_and_bytes_are_copied_with_an_end)
{
	char *string = memory_string("hedge"), *bytes = memory_bytes("hedge", 2),
		*nothing = memory_bytes(NULL, 0);

	ck_assert_str_eq(string, "hedge");
	ck_assert_str_eq(bytes, "he");
	ck_assert_str_eq(nothing, "");
	free(string);
	free(bytes);
	free(nothing);
}
END_TEST

START_TEST(a_list_grows_by_doubling_and_keeps_its_items)
{
	int *items = NULL, moves = 0;
	size_t capacity = 0;

	for (size_t i = 0; i < 10000; i++) {
		size_t before = capacity;

		items = memory_grow(items, i, &capacity, sizeof *items);
		moves += capacity != before;
		ck_assert_uint_gt(capacity, i);
		items[i] = (int)i;
	}
	for (int i = 0; i < 10000; i++)
		ck_assert_int_eq(items[i], i);
	ck_assert_int_le(moves, 11);
	free(items);
}
END_TEST

START_TEST(what_blocks_took_is_counted_and_a_resized_one_once)
{
	size_t start = memory_taken(), grown;
	char *block = memory_new(100, 1);

	ck_assert_uint_ge(memory_taken() - start, 100);
	block = memory_resize(block, 1000, 1);
	grown = memory_taken() - start;
	ck_assert_uint_ge(grown, 1000);
	ck_assert_uint_lt(grown, 1100);
	free(block);
	ck_assert_uint_eq(memory_taken() - start, grown);
}
END_TEST

START_TEST(an_arena_hands_out_zeroed_aligned_blocks_that_do_not_touch)
{
	enum { BLOCKS = 3000 };
	struct arena arena = ARENA_EMPTY;
	struct random random = { 1 };
	unsigned char *blocks[BLOCKS];
	size_t sizes[BLOCKS];

	for (int round = 0; round < 2; round++) {
		for (int i = 0; i < BLOCKS; i++) {
			/* Now and then one larger than a chunk. */
			int most = i % 500 == 7 ? 200000 : 300;

			sizes[i] = (size_t)random_below(&random, most);
			blocks[i] = arena_new(&arena, sizes[i], 1);
			ck_assert(is_zero(blocks[i], sizes[i]));
			ck_assert_uint_eq((uintptr_t)blocks[i] % alignof(max_align_t), 0);
			memset(blocks[i], i % 255 + 1, sizes[i]);
		}
		for (int i = 0; i < BLOCKS; i++)
			for (size_t at = 0; at < sizes[i]; at += 17)
				ck_assert_int_eq(blocks[i][at], i % 255 + 1);
		arena_clear(&arena);
		ck_assert_ptr_null(arena.newest);
	}
}
END_TEST

START_TEST(an_arena_keeps_filling_a_chunk_behind_a_large_block)
{
	struct arena arena = ARENA_EMPTY;
	char *first = arena_new(&arena, 16, 1), *large = arena_new(&arena, 1000000, 1),
		*next = arena_new(&arena, 16, 1);

	ck_assert(next > first && next < first + 100);
	ck_assert(is_zero(large, 1000000));
	arena_clear(&arena);
}
END_TEST

START_TEST(a_list_in_an_arena_keeps_its_items)
{
	struct arena arena = ARENA_EMPTY;
	int *items = NULL;
	size_t capacity = 0;

	for (size_t i = 0; i < 50000; i++) {
		items = arena_grow(&arena, items, i, &capacity, sizeof *items);
		items[i] = (int)i;
	}
	for (int i = 0; i < 50000; i++)
		ck_assert_int_eq(items[i], i);
	arena_clear(&arena);
}
END_TEST

START_TEST(a_large_list_in_an_arena_leaves_nothing_outgrown)
{
	struct arena arena = ARENA_EMPTY;
	int *items = NULL, *other = NULL;
	size_t capacity = 0, other_capacity = 0, start = memory_taken();

	for (size_t i = 0; i < 3000000; i++) {
		items = arena_grow(&arena, items, i, &capacity, sizeof *items);
		other = arena_grow(&arena, other, i, &other_capacity, sizeof *other);
		items[i] = (int)i;
		other[i] = -(int)i;
	}
	for (int i = 0; i < 3000000; i++)
		ck_assert(items[i] == i && other[i] == -i);
	ck_assert_uint_lt(memory_taken() - start,
		(capacity + other_capacity) * sizeof *items + 1000000);
	arena_clear(&arena);
	ck_assert_ptr_null(arena.newest);
}
END_TEST

START_TEST(an_arena_prints_strings_of_any_length)
{
	struct arena arena = ARENA_EMPTY;
	char *empty = arena_print(&arena, "%s", ""),
		*text = arena_print(&arena, "%d %s", 7, "beds"),
		*longer = arena_print(&arena, "%0*d", 100000, 1);

	ck_assert_str_eq(empty, "");
	ck_assert_str_eq(text, "7 beds");
	ck_assert_uint_eq(strlen(longer), 100000);
	arena_clear(&arena);
}
END_TEST

static void say_so(void)
{
	/* What a program would do with its screen. */
	if (write(STDOUT_FILENO, "hook", 4) != 4)
		_exit(3);
}

/* Products that come to nothing in a size_t. */
static void grow_far(void)
{
	size_t capacity = SIZE_MAX / 32 + 1;

	memory_grow(NULL, capacity, &capacity, 16);
}

static void arena_far(void)
{
	struct arena arena = ARENA_EMPTY;

	arena_new(&arena, SIZE_MAX / 4 + 1, 4);
}

static void arena_half(void)
{
	struct arena arena = ARENA_EMPTY;

	arena_new(&arena, SIZE_MAX - 8, 1);
}

static void resize_far(void)
{
	memory_resize(NULL, SIZE_MAX / 4 + 1, 4);
}

static void new_large(void)
{
	memory_new(1, (size_t)1 << 47);
}

static void resize_large(void)
{
	memory_resize(NULL, 1, (size_t)1 << 47);
}

/* The last two ask the system for more than there is, which the address sanitizer would report. */
static void (*const demands[])(void) = { grow_far, arena_far, arena_half, resize_far, new_large,
	resize_large };

#ifdef __has_feature
#define HAS_FEATURE(name) __has_feature(name)
#else
#define HAS_FEATURE(name) 0
#endif

#if defined(__SANITIZE_ADDRESS__) || HAS_FEATURE(address_sanitizer)
enum { DEMANDS = 4 };
#else
enum { DEMANDS = 6 };
#endif

/* What a process that makes the demand writes to both outputs, and its wait status. */
static int demand_status(void (*demand)(void), void (*hook)(void), char *said, size_t size)
{
	int ends[2], status = -1;
	ssize_t length;
	pid_t child;

	ck_assert_int_eq(pipe(ends), 0);
	child = fork();
	if (child == 0) {
		dup2(ends[1], STDOUT_FILENO);
		dup2(ends[1], STDERR_FILENO);
		memory_on_exhaustion(hook);
		demand();
		_exit(99);
	}
	close(ends[1]);
	length = read(ends[0], said, size - 1);
	said[length > 0 ? length : 0] = '\0';
	close(ends[0]);
	ck_assert_int_eq(waitpid(child, &status, 0), child);
	return status;
}

START_TEST(running_out_calls_the_hook_and_ends_with_2)
{
	char said[200];
	int status = demand_status(demands[_i], say_so, said, sizeof said);

	ck_assert_str_eq(said, "hook");
	ck_assert(WIFEXITED(status));
	ck_assert_int_eq(WEXITSTATUS(status), 2);
}
END_TEST

START_TEST(running_out_without_a_hook_says_a_sentence)
{
	char said[200];
	int status = demand_status(demands[_i], NULL, said, sizeof said);

	ck_assert_str_eq(said, "parterre: out of memory\n");
	ck_assert(WIFEXITED(status));
	ck_assert_int_eq(WEXITSTATUS(status), 2);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("memory");
	TCase *block = suite_case(suite, "blocks"), *arena = suite_case(suite, "arenas"),
		*out = suite_case(suite, "running out");

	tcase_add_test(block, new_memory_is_zeroed_and_may_be_empty);
	tcase_add_test(block, resized_memory_keeps_what_it_held);
	tcase_add_test(block, strings_and_bytes_are_copied_with_an_end);
	tcase_add_test(block, a_list_grows_by_doubling_and_keeps_its_items);
	tcase_add_test(block, what_blocks_took_is_counted_and_a_resized_one_once);
	tcase_add_test(arena, an_arena_hands_out_zeroed_aligned_blocks_that_do_not_touch);
	tcase_add_test(arena, an_arena_keeps_filling_a_chunk_behind_a_large_block);
	tcase_add_test(arena, a_list_in_an_arena_keeps_its_items);
	tcase_add_test(arena, a_large_list_in_an_arena_leaves_nothing_outgrown);
	tcase_add_test(arena, an_arena_prints_strings_of_any_length);
	tcase_add_loop_test(out, running_out_calls_the_hook_and_ends_with_2, 0, DEMANDS);
	tcase_add_loop_test(out, running_out_without_a_hook_says_a_sentence, 0, DEMANDS);
	return suite;
}
