/* A form before it is drawn: labelled fields, what was typed into them, and who takes it. What
 * is typed is read by the reader of the plot format (plot/value.h) and refused in the same
 * words. */
#ifndef EDITOR_ASK_SHEET_H
#define EDITOR_ASK_SHEET_H

#include "plot/value.h"

struct field {
	const char *label;
	const struct value_rule *rule;
	bool required;
	bool is_far; /* of the plan's own size: a bare number was meant in feet or metres */
	char *typed; /* UTF-8, owned; "" while unset. A text is typed without its quotes. */
	char *unset; /* what holds while nothing is typed, owned; NULL: nothing to be said */
};

/* What is wrong with a sheet: the field to go back to, and a sentence. Both texts are owned;
 * they start from TEXT_EMPTY. */
struct fault {
	int field;
	struct text words;
	struct text offer; /* what may have been meant instead; empty: no idea */
};

struct sheet {
	const char *title;
	const char *done; /* what the last Enter does: "begin the plot" */
	enum units units; /* for what the messages show as examples */
	struct field *fields;
	int count;
	/* Takes over what was typed; or fills the fault and returns false, having changed
	 * nothing. */
	bool (*accept)(struct sheet *sheet, struct fault *fault);
	/* What the field's rule cannot know, of a set value; may be NULL. Fills the fault,
	 * returns false. */
	bool (*check)(const struct sheet *sheet, int field, const struct value *value,
		struct fault *fault);
	/* Called when a field was changed, to bring others into line; may be NULL. */
	void (*changed)(struct sheet *sheet, int field);
	void *owner; /* for these three */
};

/* Fields without text, for sheet_fini to free. */
void sheet_init(struct sheet *sheet, int count);
void sheet_fini(struct sheet *sheet);
void sheet_type(struct sheet *sheet, int field, const char *typed);
/* Types a set value as the format writes it in the sheet's units; an unset one empties the
 * field. */
void sheet_type_value(struct sheet *sheet, int field, const struct value *value);

/* True where the field still says what sheet_type_value would type for the value. */
bool sheet_says(const struct sheet *sheet, int field, const struct value *value);

/* Reads one field: what is empty is unset. *value owns what it holds. False, fault filled, where
 * it is no such value, or is needed and empty. */
bool sheet_read(const struct sheet *sheet, int field, struct value *value, struct fault *fault);
/* Fills the fault and returns false. */
bool fault_set(struct fault *fault, int field, const char *format, ...)
	__attribute__((format(printf, 3, 4)));
void fault_clear(struct fault *fault);
void fault_fini(struct fault *fault);

#endif
