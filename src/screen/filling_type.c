#include "screen/filling.h"
#include "base/utf8.h"
#include "screen/encode.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

void filling_take(struct filling *filling)
{
	struct card *card = filling->card;
	struct text words = TEXT_EMPTY;

	typing_add_all(&filling->typing, &words);
	card_type(card, filling->at, words.bytes);
	fault_clear(&filling->fault);
	if (words.length == 0 && filling->lacking == filling->at)
		filling->lacking = LACKING_NONE;
	if (card->changed)
		card->changed(card, filling->at);
	/* Not even its own field is safe from a card that brings its fields into line. */
	if (strcmp(card->fields[filling->at].typed, words.bytes) != 0)
		filling_go(filling, filling->at);
	text_fini(&words);
}

void filling_lack(struct filling *filling)
{
	filling->lacking = filling->at;
	text_clear(&filling->said);
	text_print(&filling->said, "%s: ", filling_field(filling)->label);
}

void filling_miss(struct filling *filling)
{
	filling_lack(filling);
	text_add(&filling->said, "what came is no character in this session's locale; "
		"it is left out.");
}

/* A character that no plot holds is shown as ?, and refused with the card. */
static void warn(struct filling *filling, const uint32_t *codes, size_t count)
{
	for (size_t i = 0; i < count; i++)
		if (!utf8_is_text(codes[i]) && !utf8_is_joiner(codes[i])) {
			text_clear(&filling->said);
			text_print(&filling->said,
				"%s: U+%04X is shown as ?. No plot can hold it: take it out.",
				filling_field(filling)->label, (unsigned)codes[i]);
			return;
		}
}

/* What is typed into a fresh field begins it anew. */
static bool put_in(struct filling *filling, const uint32_t *codes, size_t count)
{
	if (!typing_insert(&filling->typing, codes, count))
		return false;
	warn(filling, codes, count);
	filling_take(filling);
	return true;
}

void filling_type(struct filling *filling, uint32_t character)
{
	size_t most = filling->typing.most;

	if (put_in(filling, &character, 1))
		return;
	filling_lack(filling);
	text_print(&filling->said, "%zu character%s the most; what comes after is left out.",
		most, most == 1 ? " is" : "s are");
}

static void refuse(struct filling *filling, const char *why)
{
	filling_lack(filling);
	text_print(&filling->said, "none of what was pasted is in it: %s.", why);
}

/* What a paste had that no field holds. */
struct found {
	bool breaks, controls;
};

static bool is_break(uint32_t code)
{
	return code == '\n' || code == '\r' || code == '\t';
}

/* Ends of lines and tabs become blanks, the end of the last line nothing; Enter never comes out of
 * a paste. Control characters are left out. Returns how many characters there are then. */
static size_t make_even(uint32_t *codes, size_t count, struct found *found)
{
	size_t kept = 0;
	uint32_t before = 0;

	while (count > 0 && (codes[count - 1] == '\n' || codes[count - 1] == '\r'))
		count--;
	for (size_t i = 0; i < count; i++) {
		uint32_t code = codes[i];
		bool is_control = (code < ' ' && !is_break(code)) || code == 0x7f;

		found->breaks |= is_break(code);
		found->controls |= is_control;
		if (!is_control && (code != '\n' || before != '\r'))
			codes[kept++] = is_break(code) ? ' ' : code;
		before = code;
	}
	return kept;
}

static void say_found(struct filling *filling, const struct found *found)
{
	if (found->controls) {
		filling_lack(filling);
		text_add(&filling->said, "control characters were left out of what was pasted.");
	} else if (found->breaks && !filling->said.length) {
		text_print(&filling->said, "%s: ends of lines and tabs went in as blanks.",
			filling_field(filling)->label);
	}
}

void filling_paste(struct filling *filling, const struct text *pasted)
{
	struct found found = { .breaks = false };
	size_t count, room = typing_room(&filling->typing);
	uint32_t *codes = encode_read(pasted->bytes, pasted->length, &count);

	if (!codes) {
		refuse(filling, "it is no text in this session's locale");
		return;
	}
	count = make_even(codes, count, &found);
	if (filling->lacking != filling->at)
		text_clear(&filling->said);
	if (put_in(filling, codes, count)) {
		say_found(filling, &found);
	} else {
		char why[96];

		snprintf(why, sizeof why, "it has %zu characters, and there is room for %zu", count,
			room);
		refuse(filling, why);
	}
	free(codes);
}
