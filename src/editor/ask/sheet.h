/* A form before it is drawn: labelled fields, what was typed into them, and who takes it. What is
 * typed is put into the strict words of the plot format (strict.h), then read by its reader
 * (plot/value.h). */
#ifndef EDITOR_ASK_SHEET_H
#define EDITOR_ASK_SHEET_H

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

/* What is wrong with a sheet: the field to go back to, and a sentence, which is owned
 * and starts from TEXT_EMPTY. */
struct fault {
	int field;
	struct text words;
};

struct sheet {
	const char *title;
	const char *done; /* what the last Enter does: "begin the plot" */
	bool has_end;     /* that Enter has a row of its own below the fields */
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
/* Types a set value as the format writes it in the sheet's units, but a size's unit once where its
 * sides have the same: "400 x 200 x 150 mm". An unset one empties the field. */
void sheet_type_value(struct sheet *sheet, int field, const struct value *value);

/* True where the field still says what sheet_type_value would type for the value. */
bool sheet_says(const struct sheet *sheet, int field, const struct value *value);

/* Reads one field: what is empty is unset. *value owns what it holds. False, fault filled, where
 * it is no such value, or is needed and empty. */
bool sheet_read(const struct sheet *sheet, int field, struct value *value, struct fault *fault);
/* Reads one field as sheet_read does, and types it in the strict words that it was taken in; *said
 * gets a sentence where they are others than were typed, "" where they are not. */
bool sheet_settle(struct sheet *sheet, int field, struct text *said, struct fault *fault);
/* As strict_unit. */
const char *sheet_unit(const struct sheet *sheet, int field);
/* A value's words as sheet_type_value types them. */
void sheet_value_words(struct text *out, const struct value_rule *rule, const struct value *value,
	enum units units);
/* Fills the fault and returns false. */
bool fault_set(struct fault *fault, int field, const char *format, ...)
	__attribute__((format(printf, 3, 4)));
void fault_clear(struct fault *fault);
void fault_fini(struct fault *fault);

#endif
