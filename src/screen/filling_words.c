#include "screen/filling.h"
#include "screen/width.h"

void filling_add_said(const struct filling *filling, struct text *words)
{
	if (filling->fault.words.length)
		text_add(words, filling->fault.words.bytes);
	else if (filling->said.length)
		text_add(words, filling->said.bytes);
	else if (filling->is_held)
		text_print(words, "%s: the locale cannot show all of it: left whole. Ctrl-U "
			"empties it.", filling_field(filling)->label);
}

void filling_add_meaning(const struct filling *filling, struct text *words)
{
	if (filling_is_end(filling))
		text_add(words, "Enter takes the card as it stands; Up goes back into it.");
	else if (filling_field(filling)->meaning)
		text_add_sentence(words, "%s", filling_field(filling)->meaning);
}

void filling_add_whole(const struct filling *filling, int columns, struct text *words)
{
	const char *typed = filling_field(filling)->typed;

	if (width_of(typed) > columns)
		text_add(words, typed);
}

void filling_add_choices(const struct filling *filling, struct text *words)
{
	enum { EXPLAINED = 2 }; /* so many words a field's meaning explains */
	const char *const *choices = filling_field(filling)->rule->words;
	struct text list = TEXT_EMPTY;
	int count = 0;

	if (!filling_is_choice(filling))
		return;
	for (; choices[count]; count++)
		text_add_listed(&list, choices[count], !choices[count + 1]);
	if (count > EXPLAINED)
		text_add_sentence(words, "One of %s.", list.bytes);
	text_fini(&list);
}

void filling_add_unset(const struct filling *filling, struct text *words)
{
	const struct field *field = filling_field(filling);

	if (field->typed[0] == '\0' && field->unset)
		text_add_sentence(words, "Unset, so %s.", field->unset);
}

void filling_add_unit(const struct filling *filling, struct text *words)
{
	const char *unit = card_unit(filling->card, filling->at);

	if (unit)
		text_add_sentence(words, "A number alone is in %s.", unit);
}
