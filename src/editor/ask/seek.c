#include "editor/ask/seek.h"

#include <string.h>

/* From the best match to the worst. */
enum { AT_THE_START, AT_A_WORD, INSIDE, ALSO_A_WORD, NOT_AT_ALL };

/* Where a word of the text begins so; the first word too. */
static bool has_word(const char *text, const char *typed)
{
	for (const char *at = text; (at = strcasestr(at, typed)); at++)
		if (at == text || at[-1] == ' ')
			return true;
	return false;
}

static int match(const struct question *question, int i, const char *typed)
{
	const char *answer = question->answers[i];

	if (strncasecmp(answer, typed, strlen(typed)) == 0)
		return AT_THE_START;
	if (has_word(answer, typed))
		return AT_A_WORD;
	if (strcasestr(answer, typed))
		return INSIDE;
	return question->also && has_word(question->also[i], typed) ? ALSO_A_WORD : NOT_AT_ALL;
}

int seek_best(const struct question *question, const char *typed)
{
	int best = ANSWER_NONE, found = NOT_AT_ALL;

	for (int i = 0; i < question->count; i++) {
		int rank = match(question, i, typed);

		if (rank < found) {
			found = rank;
			best = i;
		}
	}
	return best;
}

int seek_next(const struct question *question, const char *typed, int at)
{
	for (int i = 1; i < question->count; i++) {
		int next = (at + i) % question->count;

		if (match(question, next, typed) != NOT_AT_ALL)
			return next;
	}
	return at;
}
