#include "editor/cards/book_card.h"
#include "base/memory.h"
#include "base/path.h"
#include "editor/cards/card_ask.h"
#include "prices/prices.h"
#include "report/new_book.h"

#include <stdlib.h>

enum { FIELD_FILE, FIELD_CURRENCY, FIELDS };

static const struct value_rule currency_rule = { .kind = VALUE_TEXT, .least = 1,
	.most = CURRENCY_MOST };

/* What is there is taken as it is, if it is a book. */
static bool book_take(const char *path, struct fault *fault)
{
	struct text message = TEXT_EMPTY;
	struct book book;
	bool is_read = prices_read(path, &book, &message);

	if (is_read)
		book_fini(&book);
	else
		fault_set(fault, FIELD_FILE, "No price book: %s", message.bytes);
	text_fini(&message);
	return is_read;
}

static bool book_begin(const struct editor *editor, const char *path, const char *currency,
	struct fault *fault)
{
	struct text book = TEXT_EMPTY, message = TEXT_EMPTY;
	struct file_error error;
	bool is_made = new_book(&book, &editor->takeoff, currency, &message);

	if (!is_made)
		fault_set(fault, FIELD_FILE, "Not written: %s", message.bytes);
	else if (!file_write(path, book.bytes, book.length, &error))
		is_made = fault_set(fault, FIELD_FILE, "Not written: %s.", error.sentence);
	text_fini(&message);
	text_fini(&book);
	return is_made;
}

static bool book_set(struct editor *editor, const struct value *name, const char *currency,
	struct fault *fault)
{
	char *path = path_in_folder(editor->store.path, name->as.text);
	bool is_new = file_is_missing(path);
	bool done = is_new ? book_begin(editor, path, currency, fault) : book_take(path, fault);

	if (done) {
		block_set(&editor_edit(editor)->details.head, HEAD_PRICES,
			value_copy(VALUE_TEXT, name));
		editor_say(editor, "%s %s.", is_new ? "A new price book is in" :
			"The price book is", path);
	}
	free(path);
	return done;
}

static bool accept(struct card *card, struct fault *fault)
{
	struct value name, currency;
	bool done;

	if (!card_read(card, FIELD_FILE, &name, fault))
		return false;
	done = card_read(card, FIELD_CURRENCY, &currency, fault);
	if (done) {
		done = book_set(card->owner, &name, currency.set ? currency.as.text : NULL,
			fault);
		value_fini(VALUE_TEXT, &currency);
	}
	value_fini(VALUE_TEXT, &name);
	return done;
}

bool book_card_fill(struct editor *editor)
{
	const struct value *named = block_value(&editor->plot->details.head, HEAD_PRICES);
	const struct field_spec fields[FIELDS] = {
		[FIELD_FILE] = { .label = "File", .required = true,
			.meaning = "The price book, seen from the plot; a new one is made.",
			.rule = &attribute_row(HEAD_PRICES)->rule,
			.typed = named->set ? named->as.text : "prices.json" },
		[FIELD_CURRENCY] = { .label = "Currency",
			.meaning = "Of the prices in a new book, such as USD.",
			.rule = &currency_rule, .unset = "to be given later" },
	};

	return card_ask(editor, &(struct card_spec){ .title = "A price book for this plot",
		.done = "take or make it", .fields = fields, .count = FIELDS, .accept = accept,
		.owner = editor });
}
