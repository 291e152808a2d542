#include "survey/tally.h"

#include <assert.h>
#include <string.h>

/* AT_ONCE words are added up by a loop that compilers unroll into wide registers. */
enum { AT_ONCE = 8, BYTE = 8, LOW_PLANES = 8 };

void tally_init(struct tally *tally, struct arena *arena, size_t words)
{
	*tally = (struct tally){ .words = (words + AT_ONCE - 1) / AT_ONCE * AT_ONCE };
	for (int i = 0; i < TALLY_PLANES; i++) {
		tally->planes[i] = arena_new(arena, tally->words, sizeof **tally->planes);
		tally->waiting[i] = arena_new(arena, tally->words, sizeof **tally->waiting);
	}
	tally->set = arena_new(arena, tally->words, sizeof *tally->set);
}

/* Of three sets of one weight: the ones of their sum into a, what it carries into c. */
static void add_three(uint64_t *restrict a, const uint64_t *restrict b, uint64_t *restrict c,
	size_t words)
{
	for (size_t i = 0; i < words; i += AT_ONCE) {
		for (size_t j = 0; j < AT_ONCE; j++) {
			uint64_t differ = a[i + j] ^ b[i + j], third = c[i + j];

			c[i + j] = (a[i + j] & b[i + j]) | (differ & third);
			a[i + j] = differ ^ third;
		}
	}
}

/* A set waits at each plane whose bit is in the number of sets. */
void tally_add(struct tally *tally)
{
	uint64_t *set = tally->set;
	int plane = 0;

	assert(tally->sets < TALLY_MOST);
	for (; tally->sets >> plane & 1; plane++)
		add_three(tally->planes[plane], tally->waiting[plane], set, tally->words);
	tally->set = tally->waiting[plane];
	tally->waiting[plane] = set;
	tally->sets++;
	memset(tally->set, 0, tally->words * sizeof *set);
}

void tally_end(struct tally *tally)
{
	for (int i = 0; i < TALLY_PLANES; i++) {
		if (!(tally->sets >> i & 1))
			continue;
		for (size_t word = 0; word < tally->words; word++) {
			uint64_t carried = tally->waiting[i][word];

			for (int plane = i; carried; plane++) {
				uint64_t both = tally->planes[plane][word] & carried;

				tally->planes[plane][word] ^= carried;
				carried = both;
			}
		}
	}
}

/* The rows of an 8 x 8 square of bits, a byte each, become its columns. (Henry S. Warren, Hacker's
 * Delight, 2nd ed., 2012, section 7-3.) */
static uint64_t turned(uint64_t square)
{
	uint64_t t = (square ^ square >> 7) & 0x00AA00AA00AA00AA;

	square ^= t ^ t << 7;
	t = (square ^ square >> 14) & 0x0000CCCC0000CCCC;
	square ^= t ^ t << 14;
	t = (square ^ square >> 28) & 0x00000000F0F0F0F0;
	return square ^ t ^ t << 28;
}

void tally_counts(const struct tally *tally, size_t word, uint16_t counts[WORD_BITS])
{
	uint64_t high = tally->planes[LOW_PLANES][word];
	uint8_t low[WORD_BITS];

	for (int first = 0; first < WORD_BITS; first += BYTE) {
		uint64_t square = 0;

		for (int plane = 0; plane < LOW_PLANES; plane++)
			square |= (tally->planes[plane][word] >> first & 0xFF) << plane * BYTE;
		square = turned(square);
		for (int i = 0; i < BYTE; i++)
			low[first + i] = (uint8_t)(square >> i * BYTE);
	}
	for (int i = 0; i < WORD_BITS; i++)
		counts[i] = low[i];
	for (int i = 0; i < WORD_BITS && high; i++)
		counts[i] = (uint16_t)(counts[i] | (high >> i & 1) << LOW_PLANES);
}

void tally_clear(struct tally *tally)
{
	for (int i = 0; i < TALLY_PLANES; i++)
		memset(tally->planes[i], 0, tally->words * sizeof **tally->planes);
	memset(tally->set, 0, tally->words * sizeof *tally->set);
	tally->sets = 0;
}
