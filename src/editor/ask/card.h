/* A form before it is drawn: labelled fields, what was typed into them, and who takes it. What is
 * typed is put into the strict words of the plot format (strict.h), then read by its reader
 * (plot/value.h). */
#ifndef EDITOR_ASK_CARD_H
#define EDITOR_ASK_CARD_H

#include "editor/ask/strict.h"

struct field {
	const char *label;
	const char *meaning; /* what it is, in a sentence that fits a row */
	const struct value_rule *rule;
	bool required;
	enum span span; /* of a length */
	bool is_cells;  /* a length or so many cells, of the plan's own size */
	char *typed; /* UTF-8, owned; "" while unset. A text is typed without its quotes. */
	char *unset; /* what holds while nothing is typed, owned; NULL: nothing to be said */
};

/* What is wrong with a card: the field to go back to, and a sentence, which is owned
 * and starts from TEXT_EMPTY. */
struct fault {
	int field;
	struct text words;
};

/* Where it goes on after a card that asks for one thing of many. */
struct onward {
	bool goes_on;    /* Enter or an arrow took the card; else it was left */
	int right, down; /* the arrow's: -1, 0 or 1; both 0: Enter's */
};

struct card {
	const char *title;
	const char *done; /* what the last Enter does: "begin the plot" */
	bool has_end;     /* that Enter has a row of its own below the fields */
	enum units units; /* for what the messages show as examples */
	struct field *fields;
	int count;
	/* Takes over what was typed; or fills the fault and returns false, having changed
	 * nothing. */
	bool (*accept)(struct card *card, struct fault *fault);
	/* What the field's rule cannot know, of a set value; may be NULL. Fills the fault,
	 * returns false. */
	bool (*check)(const struct card *card, int field, const struct value *value,
		struct fault *fault);
	/* Called when a field was changed, to bring others into line; may be NULL. */
	void (*changed)(struct card *card, int field);
	void *owner; /* for these three */
	struct onward *onward; /* of a card of one field that arrows take too; NULL: they do not */
};

/* Fields without text, for card_fini to free. */
void card_init(struct card *card, int count);
void card_fini(struct card *card);
void card_type(struct card *card, int field, const char *typed);
/* Types a set value as the format writes it in the card's units, but a size's unit once where its
 * sides have the same: "400 x 200 x 150 mm". An unset one empties the field. */
void card_type_value(struct card *card, int field, const struct value *value);

/* True where the field still says what card_type_value would type for the value. */
bool card_says(const struct card *card, int field, const struct value *value);

/* Reads one field: what is empty is unset. *value owns what it holds. False, fault filled, where
 * it is no such value, or is needed and empty. */
bool card_read(const struct card *card, int field, struct value *value, struct fault *fault);
/* Reads one field as card_read does, and types it in the strict words that it was taken in; *said
 * gets a sentence where they are others than were typed, "" where they are not. */
bool card_settle(struct card *card, int field, struct text *said, struct fault *fault);
/* As strict_unit. */
const char *card_unit(const struct card *card, int field);
/* A value's words as card_type_value types them. */
void card_value_words(struct text *out, const struct value_rule *rule, const struct value *value,
	enum units units);
/* Fills the fault and returns false. */
bool fault_set(struct fault *fault, int field, const char *format, ...)
	__attribute__((format(printf, 3, 4)));
void fault_clear(struct fault *fault);
void fault_fini(struct fault *fault);

#endif
