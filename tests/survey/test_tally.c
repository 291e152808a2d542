/* Counting bits of many sets at once, against counting them one by one. */
#include "survey/tally.h"
#include "support/random.h"
#include "support/runner.h"

#include <string.h>

enum { WORDS = 5 };

static void check_counts(const struct tally *tally, int expected[WORDS][WORD_BITS], int sets)
{
	uint16_t counts[WORD_BITS];

	for (int word = 0; word < WORDS; word++) {
		tally_counts(tally, (size_t)word, counts);
		for (int i = 0; i < WORD_BITS; i++)
			ck_assert_msg(counts[i] == expected[word][i],
				"bit %d of %d sets: %d, not %d", word * WORD_BITS + i, sets,
				counts[i], expected[word][i]);
	}
}

/* Adds so many sets; one in `rare` bits is in each but for the first word, which has all. */
static void add_sets(struct tally *tally, struct random *random, int sets, int rare)
{
	int expected[WORDS][WORD_BITS] = { { 0 } };

	for (int i = 0; i < sets; i++) {
		uint64_t *set = tally->set;

		for (int word = 0; word < WORDS; word++)
			ck_assert_uint_eq(set[word], 0);
		set[0] = ~UINT64_C(0);
		for (int word = 0; word < WORDS; word++) {
			for (int bit = 0; bit < WORD_BITS; bit++) {
				if (word > 0 && random_below(random, rare) == 0)
					set[word] |= UINT64_C(1) << bit;
				expected[word][bit] += (int)(set[word] >> bit & 1);
			}
		}
		tally_add(tally);
	}
	tally_end(tally);
	check_counts(tally, expected, sets);
}

START_TEST(counts_are_those_that_one_by_one_gives)
{
	static const int some[] = { 0, 1, 2, 3, 4, 7, 8, 144, 255, 256, 288, TALLY_MOST };
	struct random random = { 1 };
	struct arena arena = ARENA_EMPTY;
	struct tally tally;

	for (size_t i = 0; i < sizeof some / sizeof *some; i++) {
		tally_init(&tally, &arena, WORDS);
		add_sets(&tally, &random, some[i], 1 + (int)i % 4);
	}
	arena_clear(&arena);
}
END_TEST

START_TEST(what_was_counted_before_is_gone_after_a_clear)
{
	struct random random = { 2 };
	struct arena arena = ARENA_EMPTY;
	struct tally tally;

	tally_init(&tally, &arena, WORDS);
	for (int sets = 0; sets < 40; sets++) {
		tally.set[sets % WORDS] = ~UINT64_C(0); /* and not added */
		tally_clear(&tally);
		add_sets(&tally, &random, sets * 7 % 40, 2);
	}
	arena_clear(&arena);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("tally");
	TCase *counts = suite_case(suite, "counts");

	tcase_add_test(counts, counts_are_those_that_one_by_one_gives);
	tcase_add_test(counts, what_was_counted_before_is_gone_after_a_clear);
	return suite;
}
