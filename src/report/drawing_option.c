#include "report/drawing_option.h"
#include "base/complain.h"
#include "base/scan.h"

#include <string.h>

enum { SHEET_MOST = 9999 };

const char *drawing_option_name(int option)
{
	static const char *const names[] = { "--paper", "--turn", "--scale", "--sheet", "--with",
		"--plain" };

	return option >= OPTION_PAPER && option < OPTION_BEYOND ? names[option - OPTION_PAPER] :
		NULL;
}

/* Index of the word among those; -1 where it is none. */
static int index_of(const char *const *words, const char *word, size_t length)
{
	for (int i = 0; words[i]; i++)
		if (strlen(words[i]) == length && strncmp(words[i], word, length) == 0)
			return i;
	return -1;
}

/* One of these words. */
static bool word_read(int *out, const char *option, const char *const *words, const char *word)
{
	struct text listed = TEXT_EMPTY;

	*out = index_of(words, word, strlen(word));
	for (int i = 0; words[i] && *out < 0; i++)
		text_add_listed(&listed, words[i], !words[i + 1]);
	if (*out < 0)
		complain("%s: \"%s\" is not understood: it takes %s", option, word, listed.bytes);
	text_fini(&listed);
	return *out >= 0;
}

static bool scale_option(struct svg_asked *asked, const char *word)
{
	if (scale_read(word, &asked->scale))
		return true;
	complain("--scale: \"%s\" is not understood: it takes 1:50, up to 1:%d, or what an inch of "
		"paper is on the ground, such as \"4 ft\"", word, SCALE_MOST);
	return false;
}

static bool sheet_option(struct svg_asked *asked, const char *word)
{
	struct scan s = scan_start(word, strlen(word), 1);
	int64_t number;

	if (scan_decimal(&s, 0, &number) && s.at == s.length && number > 0 &&
	    number <= SHEET_MOST) {
		asked->sheet = (int)number;
		return true;
	}
	complain("--sheet: \"%s\" is not understood: it takes a number from 1 to %d", word,
		SHEET_MOST);
	return false;
}

/* "levels,sun" */
static bool with_option(struct svg_asked *asked, const char *words)
{
	for (const char *at = words; at; at = strchr(at, ',')) {
		size_t length;
		int which;

		at += at != words;
		length = strcspn(at, ",");
		which = index_of(svg_with_words, at, length);
		if (which < 0) {
			complain("--with: there is no \"%.*s\" to be drawn besides: it takes "
				"levels, strings, sun, or some of them with commas",
				(int)length, at);
			return false;
		}
		asked->with |= 1u << which;
	}
	return true;
}

bool drawing_option_read(struct svg_asked *asked, enum drawing_option option, const char *word)
{
	switch (option) {
	case OPTION_PAPER:
		return word_read(&asked->paper, "--paper", paper_words, word);
	case OPTION_TURN:
		return word_read(&asked->turn, "--turn", paper_turn_words, word);
	case OPTION_SCALE:
		return scale_option(asked, word);
	case OPTION_SHEET:
		return sheet_option(asked, word);
	case OPTION_WITH:
		return with_option(asked, word);
	case OPTION_PLAIN:
		asked->is_plain = true;
		break;
	case OPTION_BEYOND:
		break;
	}
	return true;
}
