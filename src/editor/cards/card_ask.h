/* Asking with a card: its fields as they are before anybody types. */
#ifndef EDITOR_CARDS_CARD_ASK_H
#define EDITOR_CARDS_CARD_ASK_H

#include "editor/ask/block_card.h"
#include "editor/editor.h"

/* As in struct field; the texts are the caller's. */
struct field_spec {
	const char *label, *meaning;
	const struct value_rule *rule;
	bool required, is_cells;
	enum span span;
	const char *typed; /* NULL: nothing */
	const char *unset;
};

/* A field for the name of a file, which has to be there; `typed` is offered. */
struct field_spec card_file(const char *typed);
/* Reads it as people type it (path_typed); *path is the caller's to free. */
bool card_file_read(const struct card *card, int field, char **path, struct fault *fault);

/* A field for a name, which has to be there. */
struct field_spec card_name(const char *meaning, const char *typed);
/* Reads it; *name is the caller's to free. One that nobody changed since it was `before` is kept,
 * even one of blanks only; NULL: there was none. */
bool card_name_read(const struct card *card, int field, const char *before, char **name,
	struct fault *fault);

/* As in struct card. */
struct card_spec {
	const char *title, *done;
	const struct field_spec *fields; /* `count` of them, 0 or more */
	int count;
	const struct block *block; /* whose fields follow; NULL: none */
	struct block_part part;    /* what of the block */
	const struct field_spec *last; /* behind the block's, `last_count` of them, 0 or more */
	int last_count;
	bool (*accept)(struct card *card, struct fault *fault);
	bool (*check)(const struct card *card, int field, const struct value *value,
		struct fault *fault);
	void (*changed)(struct card *card, int field);
	void *owner;
	struct onward *onward;
};

/* Has the card filled in, in the plot's units. False where it was left. */
bool card_ask(struct editor *editor, const struct card_spec *spec);

#endif
