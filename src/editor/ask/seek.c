#include "editor/ask/seek.h"
#include "base/memory.h"

#include <ctype.h>
#include <stdlib.h>
#include <string.h>
#include <strings.h>

/* From the best match to the worst. */
enum match { WHOLE, BEGINNING, WITHIN, NOT_AT_ALL };

/* An answer and its heading: how well they match, and where the first under the heading stands. */
struct hit {
	int answer, rank;
	int first, best;
};

static const char blanks[] = " ";

/* Bytes of what is beyond ASCII are letters. */
static bool is_letter(char c)
{
	return isalnum((unsigned char)c) || (unsigned char)c >= 0x80;
}

/* Whether a word goes on from the one character to the other beside it. A sign is a word only
 * between blanks. */
static bool is_joined(char own, char beside)
{
	return is_letter(own) ? is_letter(beside) : beside != ' ' && beside != '\0';
}

static enum match match_word(const char *text, const char *word, size_t length)
{
	enum match best = NOT_AT_ALL;

	for (const char *at = text; *at; at++) {
		enum match match = WITHIN;

		if (strncasecmp(at, word, length) != 0)
			continue;
		if (at == text || !is_joined(word[0], at[-1]))
			match = is_joined(word[length - 1], at[length]) ? BEGINNING : WHOLE;
		best = match < best ? match : best;
	}
	return best;
}

/* The next word of what was typed; *length is 0 where there is none. */
static const char *word_next(const char *typed, size_t *length)
{
	typed += strspn(typed, blanks);
	*length = strcspn(typed, blanks);
	return typed;
}

/* Two ranks for each kind of match: in the answer, and in what else it goes by. The latter is never
 * within a word: "move" is not meant by "remove". */
static int rank_word(const struct question *question, int i, const char *word, size_t length)
{
	const char *others[] = { question->also ? question->also[i] : "",
		question->notes ? question->notes[i] : "" };
	int rank = 2 * (int)match_word(question->answers[i], word, length);

	for (size_t j = 0; j < sizeof others / sizeof *others; j++) {
		enum match match = match_word(others[j], word, length);

		if (match < WITHIN && 2 * (int)match + 1 < rank)
			rank = 2 * (int)match + 1;
	}
	return rank;
}

static int rank_all(const struct question *question, int i, const char *typed)
{
	int worst = 0;
	size_t length;

	for (typed = word_next(typed, &length); length;
	     typed = word_next(typed + length, &length)) {
		int rank = rank_word(question, i, typed, length);

		worst = rank > worst ? rank : worst;
	}
	return worst;
}

static bool goes_on(const struct question *question, int i)
{
	return i > 0 && (!question->headings ||
		strcmp(question->headings[i], question->headings[i - 1]) == 0);
}

/* One hit for each answer, all under one heading having the best rank of them. */
static void hits_rank(const struct question *question, const char *typed, struct hit *hits)
{
	for (int i = 0; i < question->count; i++) {
		int rank = rank_all(question, i, typed);
		int first = goes_on(question, i) ? hits[i - 1].first : i;

		hits[i] = (struct hit){ .answer = i, .rank = rank, .first = first, .best = rank };
		if (rank < hits[first].best)
			hits[first].best = rank;
	}
	for (int i = 0; i < question->count; i++)
		hits[i].best = hits[hits[i].first].best;
}

static int compare(const void *a, const void *b)
{
	const struct hit *one = a, *other = b;

	if (one->best != other->best)
		return one->best - other->best;
	if (one->first != other->first)
		return one->first - other->first;
	return one->rank != other->rank ? one->rank - other->rank : one->answer - other->answer;
}

int seek(const struct question *question, const char *typed, int *found)
{
	struct hit *hits = memory_new((size_t)question->count, sizeof *hits);
	int count = 0;

	hits_rank(question, typed, hits);
	qsort(hits, (size_t)question->count, sizeof *hits, compare);
	for (int i = 0; i < question->count; i++)
		if (hits[i].rank < 2 * NOT_AT_ALL)
			found[count++] = hits[i].answer;
	free(hits);
	return count;
}

bool seek_has_word(const char *text, const char *typed)
{
	size_t length;

	for (typed = word_next(typed, &length); length; typed = word_next(typed + length, &length))
		if (match_word(text, typed, length) == WHOLE)
			return true;
	return false;
}
