/* The cards, filled in without a terminal: every field of the attribute table, notes, the
 * legend, the cell. */
#include "base/memory.h"
#include "plot/edit/legend.h"
#include "plot/mirror.h"
#include "editor/acts/acts.h"
#include "editor/cards/allow_card.h"
#include "editor/ask/block_card.h"
#include "support/answers.h"
#include "support/book.h"
#include "support/details.h"
#include "support/fences.h"
#include "support/plot_check.h"
#include "support/plots.h"
#include "support/runner.h"
#include "support/scratch.h"

#include <stdlib.h>
#include <string.h>

static const char *const court[] = {
	"bbb..pp",
	"bbb.Spp",
	"lll..pp",
	NULL
};

/* An editor with a plot, and a copy of it to compare with. */
struct desk {
	struct editor editor;
	struct answers none;
	struct plot before;
	char *folder;
};

static void desk_take(struct desk *desk, struct plot *plot)
{
	desk->before = (struct plot){ details_copy(&plot->details), ground_copy(&plot->ground) };
	editor_take(&desk->editor, plot, true);
}

static void desk_open(struct desk *desk, const char *const *rows)
{
	struct plot plot;
	struct text path = TEXT_EMPTY;

	*desk = (struct desk){ .none = { .asker = answers_asker() }, .folder = scratch_new() };
	text_print(&path, "%s/new.plot", desk->folder);
	editor_init(&desk->editor, &desk->none.asker, path.bytes);
	text_fini(&path);
	plot_from_rows(&plot, rows);
	if (rows == court)
		fence_from(&plot, "0,0 7,0", "1,0 2,0");
	desk_take(desk, &plot);
}

static void desk_close(struct desk *desk)
{
	plot_check(desk->editor.plot);
	editor_fini(&desk->editor);
	answers_fini(&desk->none);
	plot_fini(&desk->before);
	scratch_remove(desk->folder);
}

/* Presses #, answered so. */
static void press(struct desk *desk, struct answers *answers)
{
	desk->editor.asker = &answers->asker;
	acts_press(&desk->editor, '#');
	plot_check(desk->editor.plot);
}

static void check_unchanged(const struct desk *desk, const char *what)
{
	ck_assert_msg(plot_equal(desk->editor.plot, &desk->before), "%s changed the plot", what);
	ck_assert_int_eq(desk->editor.position, 0);
}

/* What was done is one step, and taking it back leaves the plot as it was. */
static void check_one_step(struct desk *desk, const char *what)
{
	ck_assert_msg(desk->editor.position == 1, "%s: %d steps", what, (int)desk->editor.position);
	ck_assert_msg(!plot_equal(desk->editor.plot, &desk->before), "%s changed nothing", what);
	ck_assert(editor_take_back(&desk->editor));
	ck_assert_msg(plot_equal(desk->editor.plot, &desk->before), "%s is not taken back", what);
	ck_assert(editor_put_back(&desk->editor));
	plot_check(desk->editor.plot);
}

static void check_says(const struct text *text, const char *part)
{
	const char *words = text->bytes;

	ck_assert_ptr_nonnull(part);
	ck_assert_msg(strstr(words, part) != NULL, "\"%s\" does not say \"%s\"", words, part);
}

/* ---- Every field ---------------------------------------------------------------------------- */

static const char *const card_names[BLOCK_KINDS] = { "The plot itself", "Allowed for: walls",
	"b ", "p ", "l ", "S ", "Fence", "Hours that work takes" };

static const char *card_of(enum attribute a)
{
	for (int i = 0; i < ALLOW_CARDS; i++)
		if (a >= allow_card_part(i).first && a <= allow_card_part(i).last)
			return allow_card_titles[i];
	return card_names[attribute_block(a)];
}

/* Of an entry or the first fence, by their letters in the court. */
static struct block *listed_block(const struct plot *plot, enum block_kind kind)
{
	static const char letters[] = "  bplS";

	if (kind == BLOCK_FENCE)
		return &plot->details.fences[0].block;
	return &plot->details.legend[legend_index(&plot->details, letters[kind])].block;
}

static const struct block *block_of(const struct plot *plot, enum block_kind kind)
{
	if (kind == BLOCK_HEAD)
		return &plot->details.head;
	if (kind == BLOCK_RATES)
		return &plot->details.rates;
	return kind == BLOCK_ALLOW ? &plot->details.allow : listed_block(plot, kind);
}

static struct block *block_to_set(struct plot *plot, enum block_kind kind)
{
	if (kind == BLOCK_HEAD)
		return &plot->details.head;
	if (kind == BLOCK_RATES)
		return &plot->details.rates;
	return kind == BLOCK_ALLOW ? &plot->details.allow : listed_block(plot, kind);
}

static struct answers typing(enum attribute a, const char *words)
{
	const struct attribute_row *row = attribute_row(a);

	return (struct answers){ .asker = answers_asker(),
		.picks = { card_of(a), "Its cells" },
		.typed = { { row->label, words, 0 } } };
}

static struct text words_of(enum attribute a, const struct value *value, enum units units)
{
	struct text words = TEXT_EMPTY;

	if (attribute_row(a)->rule.kind == VALUE_TEXT)
		text_add(&words, value->as.text);
	else
		value_write(&words, &attribute_row(a)->rule, value, units);
	return words;
}

static bool is_blank(const char *words)
{
	return words[strspn(words, " \t")] == '\0';
}

static void check_good(enum attribute a, const struct value *value, const char *words)
{
	struct answers answers = typing(a, words);
	struct desk desk;
	const struct value *held;

	desk_open(&desk, court);
	press(&desk, &answers);
	ck_assert_msg(answers.refused == 0, "%s", answers.fault.words.bytes);
	held = block_value(block_of(desk.editor.plot, attribute_block(a)), a);
	ck_assert_msg(value_equal(attribute_row(a)->rule.kind, held, value), "%s: %s",
		attribute_row(a)->label, words);
	if (!plot_equal(desk.editor.plot, &desk.before))
		check_one_step(&desk, words);
	answers_fini(&answers);
	desk_close(&desk);
}

START_TEST(a_good_value_is_set_in_one_step)
{
	enum attribute a = (enum attribute)_i;
	struct random random = { (uint64_t)_i };
	const struct ground ground = { 7, 3, NULL };

	for (int turn = 0; turn < 6; turn++) {
		struct value value = value_at_random(&random, a, &ground);
		struct text words = words_of(a, &value, turn % 2 ? UNITS_METRIC : UNITS_IMPERIAL);

		if (!is_blank(words.bytes))
			check_good(a, &value, words.bytes);
		text_fini(&words);
		value_fini(attribute_row(a)->rule.kind, &value);
	}
}
END_TEST

/* One more than the range has, or what is no value of the kind at all. */
static struct text bad_words(enum attribute a)
{
	const struct value_rule *rule = &attribute_row(a)->rule;
	struct value beyond = { .set = true, .as.number = rule->most + 1 };
	struct text words = TEXT_EMPTY;

	switch (rule->kind) {
	case VALUE_TEXT:
		text_add_repeat(&words, 'x', (size_t)rule->most + 1);
		break;
	case VALUE_LENGTH:
	case VALUE_COUNT:
	case VALUE_DECIMAL:
	case VALUE_PERCENT:
		value_write(&words, rule, &beyond, UNITS_METRIC);
		break;
	case VALUE_CHOICE:
	case VALUE_SIZE:
	case VALUE_CAP:
	case VALUE_AMOUNT:
	case VALUE_MIX:
	case VALUE_SIDES:
		text_add(&words, "seven?");
		break;
	case VALUE_PLACE:
		text_add(&words, "14,1");
		break;
	}
	return words;
}

START_TEST(a_bad_value_is_refused_in_full_and_kept_as_typed)
{
	enum attribute a = (enum attribute)_i;
	struct text words = bad_words(a);
	struct answers answers = typing(a, words.bytes);
	struct desk desk;

	desk_open(&desk, court);
	press(&desk, &answers);
	ck_assert_int_eq(answers.refused, 1);
	check_says(&answers.fault.words, attribute_row(a)->label);
	check_says(&answers.fault.words, attribute_row(a)->rule.kind == VALUE_TEXT ?
		"characters are the most" : ", expected ");
	ck_assert_str_eq(answers.kept.bytes, words.bytes);
	check_unchanged(&desk, words.bytes);
	text_fini(&words);
	answers_fini(&answers);
	desk_close(&desk);
}
END_TEST

START_TEST(an_emptied_field_is_unset_unless_it_is_needed)
{
	enum attribute a = (enum attribute)_i;
	struct random random = { (uint64_t)_i };
	const struct attribute_row *row = attribute_row(a);
	struct answers answers = typing(a, "");
	struct desk desk;
	struct plot plot;

	desk_open(&desk, court);
	plot_from_rows(&plot, court);
	fence_from(&plot, "0,0 7,0", "1,0 2,0");
	if (row->rule.kind == VALUE_TEXT)
		block_set(&plot.details.head, a, (struct value){ .set = true,
			.as.text = memory_string("Old") });
	else
		block_set(block_to_set(&plot, attribute_block(a)), a,
			value_at_random(&random, a, &plot.ground));
	plot_fini(&desk.before);
	desk_take(&desk, &plot);
	press(&desk, &answers);
	if (row->required) {
		check_says(&answers.fault.words, "needed here");
		check_unchanged(&desk, row->label);
	} else {
		ck_assert(!block_value(block_of(desk.editor.plot, attribute_block(a)), a)->set);
		check_one_step(&desk, row->label);
	}
	answers_fini(&answers);
	desk_close(&desk);
}
END_TEST

START_TEST(a_number_alone_is_taken_in_the_fields_unit)
{
	static const struct {
		enum attribute attribute;
		const char *typed;
		nm length;
	} rows[] = {
		{ BED_EMBED, "6", 6 * NM_PER_INCH }, { BED_EMBED, ".5", NM_PER_INCH / 2 },
		{ BED_EMBED, "1 1/2", 3 * NM_PER_INCH / 2 },
		{ BED_EMBED, "1 ft 1", 13 * NM_PER_INCH },
		{ BED_EMBED, "50 millimetres", 50 * NM_PER_MM },
		/* What is long by default is in feet; out of range there, in the other. */
		{ ALLOW_FABRIC_LENGTH, "50", 50 * NM_PER_FOOT },
		{ FENCE_SECTION, "6", 6 * NM_PER_FOOT }, { FENCE_SECTION, "72", 6 * NM_PER_FOOT },
		{ FENCE_HEIGHT, "4", 4 * NM_PER_FOOT }, { FENCE_HEIGHT, "42", 42 * NM_PER_INCH },
	};

	for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
		struct answers answers = typing(rows[i].attribute, rows[i].typed);
		struct desk desk;

		desk_open(&desk, court);
		press(&desk, &answers);
		ck_assert_msg(answers.filled == 1, "%s: %s", rows[i].typed,
			answers.fault.words.bytes);
		ck_assert_msg(block_length(block_of(desk.editor.plot,
			attribute_block(rows[i].attribute)), rows[i].attribute) == rows[i].length,
			"%s of %s", rows[i].typed, attribute_row(rows[i].attribute)->keyword);
		answers_fini(&answers);
		desk_close(&desk);
	}
}
END_TEST

START_TEST(a_bare_number_that_no_unit_makes_good_is_told_its_range)
{
	struct answers answers = typing(HEAD_CELL, "500");
	struct desk desk;

	desk_open(&desk, court);
	press(&desk, &answers);
	check_says(&answers.fault.words, "Side of a cell: found 500 in, expected 1 in to 10 ft");
	check_unchanged(&desk, "500");
	answers_fini(&answers);
	desk_close(&desk);
}
END_TEST

/* What holds while a field is unset, in brackets, has room beside the label. */
START_TEST(what_an_unset_field_says_fits_in_it)
{
	enum { FIELD_COLUMNS = 22, BRACKETS = 2 };
	enum attribute a = (enum attribute)_i;
	enum block_kind kind = attribute_block(a);
	const struct block block = { .kind = kind };
	const struct block_part part = { a, a, false, NULL };

	for (enum units units = UNITS_IMPERIAL; units <= UNITS_METRIC; units++) {
		struct card card;

		card_init(&card, 1);
		card.units = units;
		block_fields_set(&card, 0, &block, &part);
		ck_assert_msg(!card.fields[0].unset ||
			strlen(card.fields[0].unset) + BRACKETS <= FIELD_COLUMNS, "%s",
			card.fields[0].unset);
		ck_assert_str_eq(card.fields[0].meaning, attribute_row(a)->meaning);
		/* A number typed in place of an amount that is shown is in its unit. */
		if (attribute_row(a)->rule.kind == VALUE_AMOUNT && attribute_preset(a, units)->set)
			ck_assert_str_eq(strchr(card.fields[0].unset, ' ') + 1,
				card_unit(&card, 0));
		card_fini(&card);
	}
}
END_TEST

START_TEST(unset_fields_say_their_defaults_in_the_plots_units)
{
	struct desk desk;

	desk_open(&desk, court);
	for (int is_metric = 0; is_metric <= 1; is_metric++) {
		struct answers answers = { .asker = answers_asker(), .picks = { "b " },
			.leave = "The bed b" };

		block_set(&editor_edit(&desk.editor)->details.head, HEAD_UNITS,
			(struct value){ .set = true, .as.number = is_metric });
		press(&desk, &answers);
		check_says(&answers.unset, is_metric ? ";100/150 mm by ground;" :
			";4/6 in, by ground;");
		check_says(&answers.unset, is_metric ? "400 x 200 x 150 mm" :
			"16 x 8 x 6 in");
		answers_fini(&answers);
	}
	desk_close(&desk);
}
END_TEST

/* What the price book sets holds where the plot says nothing, and is what the card shows. */
START_TEST(a_card_shows_the_price_books_value_where_the_plot_sets_none)
{
	struct answers answers = { .asker = answers_asker(), .picks = { "Allowed for: walls" },
		.leave = "Allowed for: walls and soil" };
	struct desk desk;

	desk_open(&desk, court);
	book_of(&desk.editor.book, "'allow': { 'kerf': '5/16 in', 'breakage': '11%' }");
	desk.editor.has_book = true;
	block_set(&editor_edit(&desk.editor)->details.allow, ALLOW_BREAKAGE,
		(struct value){ .set = true, .as.number = 7 * MILLION });
	press(&desk, &answers);
	ck_assert_str_eq(answers.unset.bytes, "5/16 in;1/8 in;4 in;8 in;11 %;"
		"15/20 %, by compost;2;30 ft;10 %;;");
	answers_fini(&answers);
	desk_close(&desk);
}
END_TEST

static void check_taken_as_it_came(struct desk *desk, const char *card)
{
	struct answers answers = { .asker = answers_asker(), .picks = { card } };

	press(desk, &answers);
	ck_assert_msg(answers.filled == 1, "%s", card);
	check_unchanged(desk, card);
	answers_fini(&answers);
}

/* Even what the card could not type again, such as a title of blanks. */
START_TEST(what_nobody_touched_stays_as_it_is)
{
	struct random random = { 77 };

	for (int turn = 0; turn < 40; turn++) {
		struct desk desk;
		struct plot plot;
		const struct details *details = &desk.before.details;

		desk_open(&desk, court);
		whole_plot_at_random(&plot, &random, 6);
		plot_fini(&desk.before);
		desk_take(&desk, &plot);
		check_taken_as_it_came(&desk, "The plot itself");
		for (int i = 0; i < ALLOW_CARDS; i++)
			check_taken_as_it_came(&desk, allow_card_titles[i]);
		for (size_t i = 0; i < details->legend_count; i++)
			check_taken_as_it_came(&desk,
				(const char[]){ details->legend[i].letter, ' ', '\0' });
		for (size_t i = 0; i < details->fence_count; i++)
			check_taken_as_it_came(&desk, details->fences[i].name);
		desk_close(&desk);
	}
}
END_TEST

/* ---- Notes ---------------------------------------------------------------------------------- */

START_TEST(notes_are_added_changed_and_removed_with_the_rest)
{
	enum block_kind kind = (enum block_kind)_i;
	struct answers add = { .asker = answers_asker(), .picks = { card_names[kind] },
		.typed = { { "New note, type it", "Ask \"Mrs\" \\ first", 0 } } };
	struct answers change = { .asker = answers_asker(), .picks = { card_names[kind] },
		.typed = { { "Note", "Asked", 0 }, { "New note, type it", "Two", 0 } } };
	struct answers remove = { .asker = answers_asker(), .picks = { card_names[kind] },
		.typed = { { "Note", "", 0 } } };
	const struct notes *notes;
	struct desk desk;

	desk_open(&desk, court);
	notes = &block_of(desk.editor.plot, kind)->notes;
	press(&desk, &add);
	ck_assert_uint_eq(notes->count, 1);
	ck_assert_str_eq(notes->texts[0], "Ask \"Mrs\" \\ first");
	check_one_step(&desk, "a note");
	notes = &block_of(desk.editor.plot, kind)->notes;
	press(&desk, &change);
	ck_assert_uint_eq(notes->count, 2);
	ck_assert_str_eq(notes->texts[0], "Asked");
	ck_assert_str_eq(notes->texts[1], "Two");
	press(&desk, &remove);
	ck_assert_uint_eq(notes->count, 1);
	ck_assert_str_eq(notes->texts[0], "Two");
	ck_assert_int_eq(desk.editor.position, 3);
	answers_fini(&add);
	answers_fini(&change);
	answers_fini(&remove);
	desk_close(&desk);
}
END_TEST

START_TEST(a_note_too_long_is_refused_and_nothing_else_set)
{
	struct text words = TEXT_EMPTY;
	struct answers answers = { .asker = answers_asker(), .picks = { "b " } };
	struct desk desk;

	text_add_repeat(&words, 'x', NOTE_MOST + 1);
	answers.typed[0] = (struct typing){ "Courses", "7", 0 };
	answers.typed[1] = (struct typing){ "New note, type it", words.bytes, 0 };
	desk_open(&desk, court);
	press(&desk, &answers);
	ck_assert_int_eq(answers.refused, 1);
	check_says(&answers.fault.words, "New note, type it: ");
	check_unchanged(&desk, "a long note");
	text_fini(&words);
	answers_fini(&answers);
	desk_close(&desk);
}
END_TEST

START_TEST(notes_beyond_the_first_hundred_stay_in_their_order)
{
	struct answers answers = { .asker = answers_asker(), .picks = { "The plot" },
		.typed = { { "Note", "", 0 }, { "New note, type it", "last", 0 } } };
	struct desk desk;
	struct block *head;

	desk_open(&desk, court);
	head = &editor_edit(&desk.editor)->details.head;
	for (int i = 0; i < CARD_NOTES_MOST + 3; i++) {
		struct text words = TEXT_EMPTY;

		text_print(&words, "note %d", i);
		notes_add(&head->notes, words.bytes);
	}
	press(&desk, &answers);
	ck_assert_uint_eq(head->notes.count, CARD_NOTES_MOST + 3);
	ck_assert_str_eq(head->notes.texts[0], "note 1");
	ck_assert_str_eq(head->notes.texts[CARD_NOTES_MOST + 1], "note 102");
	ck_assert_str_eq(head->notes.texts[CARD_NOTES_MOST + 2], "last");
	answers_fini(&answers);
	desk_close(&desk);
}
END_TEST

/* ---- The legend ----------------------------------------------------------------------------- */

START_TEST(an_entry_is_added_with_a_free_letter_and_taken_in_hand)
{
	struct answers answers = { .asker = answers_asker(), .picks = { "Add", "A path" },
		.typed = { { "Name", "Gravel", 0 }, { "Surface", "2 in", 0 } } };
	struct desk desk;
	const struct entry *entry;

	desk_open(&desk, court);
	press(&desk, &answers);
	entry = plot_entry(desk.editor.plot, 'a');
	ck_assert_ptr_nonnull(entry);
	ck_assert_int_eq(entry->class, CLASS_PATH);
	ck_assert_str_eq(entry->name, "Gravel");
	ck_assert_int_eq(block_length(&entry->block, PATH_SURFACE), 2 * NM_PER_INCH);
	ck_assert_int_eq(desk.editor.hand, 'a');
	check_one_step(&desk, "a new entry");
	answers_fini(&answers);
	desk_close(&desk);
}
END_TEST

START_TEST(a_new_entry_needs_a_name_and_a_free_letter_of_its_class)
{
	static const struct {
		struct typing typed[2];
		const char *says;
	} rows[] = {
		{ { { "Name", "", 0 } }, "Name: needed here" },
		{ { { "Name", "Bay", 0 }, { "Letter", "b", 0 } }, "b is taken; free are a c d" },
		{ { { "Name", "Bay", 0 }, { "Letter", "B", 0 } }, "expected a small letter" },
		{ { { "Name", "Bay", 0 }, { "Letter", ".", 0 } }, "expected a small letter" },
		{ { { "Name", "Bay", 0 }, { "Letter", "\xC3\xA9", 0 } },
			"expected a small letter" },
		{ { { "Name", "Bay", 0 }, { "Letter", "xy", 0 } }, "Letter: " },
		{ { { "Name", "Bay", 0 }, { "Letter", "", 0 } }, "Letter: needed here" },
	};
	struct answers answers = { .asker = answers_asker(), .picks = { "Add", "A bed" },
		.typed = { rows[_i].typed[0], rows[_i].typed[1] } };
	struct desk desk;

	desk_open(&desk, court);
	press(&desk, &answers);
	ck_assert_int_eq(answers.refused, 1);
	check_says(&answers.fault.words, rows[_i].says);
	check_unchanged(&desk, rows[_i].says);
	answers_fini(&answers);
	desk_close(&desk);
}
END_TEST

START_TEST(no_entry_is_added_where_all_letters_are_taken)
{
	struct answers answers = { .asker = answers_asker(), .picks = { "Add", "A lawn" } };
	struct desk desk;

	desk_open(&desk, court);
	for (const char *c = "abcdefghijklmnopqrstuvwxyz"; *c; c++)
		if (!plot_entry(desk.editor.plot, *c))
			details_add_entry(&editor_edit(&desk.editor)->details, CLASS_BED, *c,
				memory_string("x"));
	press(&desk, &answers);
	ck_assert_int_eq(answers.filled + answers.refused, 0);
	check_says(&desk.editor.message, "All small letters are taken");
	answers_fini(&answers);
	desk_close(&desk);
}
END_TEST

START_TEST(another_letter_goes_on_the_ground_and_in_the_hand)
{
	struct answers answers = { .asker = answers_asker(), .picks = { "b " },
		.typed = { { "Letter", "k", 0 }, { "Name", "Kale", 0 }, { "Courses", "5", 0 } } };
	struct desk desk;

	desk_open(&desk, court);
	desk.editor.hand = 'b';
	press(&desk, &answers);
	ck_assert_int_eq(memcmp(desk.editor.plot->ground.cells, "kkk..pp" "kkk.Spp" "lll..pp", 21),
		0);
	ck_assert_str_eq(plot_entry(desk.editor.plot, 'k')->name, "Kale");
	ck_assert_int_eq(block_number(&plot_entry(desk.editor.plot, 'k')->block, BED_COURSES), 5);
	ck_assert_int_eq(desk.editor.hand, 'k');
	check_one_step(&desk, "another letter");
	answers_fini(&answers);
	desk_close(&desk);
}
END_TEST

START_TEST(an_entry_may_keep_its_letter_but_not_take_anothers)
{
	struct answers same = { .asker = answers_asker(), .picks = { "b " },
		.typed = { { "Letter", "b", 0 } } };
	struct answers other = { .asker = answers_asker(), .picks = { "b " },
		.typed = { { "Letter", "l", 0 } } };
	struct desk desk;

	desk_open(&desk, court);
	press(&desk, &same);
	ck_assert_int_eq(same.filled, 1);
	press(&desk, &other);
	check_says(&other.fault.words, "l is taken");
	check_unchanged(&desk, "the same letter");
	answers_fini(&same);
	answers_fini(&other);
	desk_close(&desk);
}
END_TEST

START_TEST(a_removed_entry_leaves_its_cells_as_one_chooses)
{
	static const struct {
		const char *to, *ground;
		char hand;
	} rows[] = {
		{ ".", ".....pp" "....Spp" "lll..pp", '.' },
		{ "l", "lll..pp" "lll.Spp" "lll..pp", 'l' },
	};
	struct answers answers = { .asker = answers_asker(),
		.picks = { "Remove", "b ", rows[_i].to } };
	struct desk desk;

	desk_open(&desk, court);
	desk.editor.hand = 'b';
	press(&desk, &answers);
	check_says(&answers.question, "6 cells");
	ck_assert_ptr_null(strstr(answers.question.bytes, "; b"));
	ck_assert_int_eq(memcmp(desk.editor.plot->ground.cells, rows[_i].ground, 21), 0);
	ck_assert_ptr_null(plot_entry(desk.editor.plot, 'b'));
	ck_assert_int_eq(desk.editor.hand, rows[_i].hand);
	check_one_step(&desk, "a removal");
	answers_fini(&answers);
	desk_close(&desk);
}
END_TEST

START_TEST(an_entry_without_cells_goes_without_a_question)
{
	struct answers answers = { .asker = answers_asker(), .picks = { "Remove", "b " } };
	struct desk desk;

	desk_open(&desk, (const char *const[]){ "bp", NULL });
	editor_edit(&desk.editor)->ground.cells[0] = 'p';
	press(&desk, &answers);
	ck_assert_int_eq(answers.asked, 2);
	ck_assert_ptr_null(plot_entry(desk.editor.plot, 'b'));
	answers_fini(&answers);
	desk_close(&desk);
}
END_TEST

START_TEST(an_empty_legend_offers_nothing_to_remove)
{
	struct answers answers = { .asker = answers_asker() };
	struct desk desk;

	desk_open(&desk, (const char *const[]){ "..", NULL });
	press(&desk, &answers);
	check_says(&answers.question, "Add an entry");
	ck_assert_ptr_null(strstr(answers.question.bytes, "Remove"));
	check_unchanged(&desk, "a question left");
	answers_fini(&answers);
	desk_close(&desk);
}
END_TEST

/* ---- What is allowed for -------------------------------------------------------------------- */

START_TEST(cards_of_what_is_allowed_for_share_out_all_of_it)
{
	struct block allow = { .kind = BLOCK_ALLOW };
	int next = ALLOW_KERF;

	for (int i = 0; i < ALLOW_CARDS; i++) {
		struct block_part part = allow_card_part(i);

		ck_assert_int_eq(part.first, next);
		ck_assert_int_ge(part.last, part.first);
		ck_assert_int_eq(part.has_notes, i == 0);
		ck_assert_int_eq(block_fields(&allow, &part),
			(int)(part.last - part.first) + 1 + (i == 0)); /* one to add a note */
		ck_assert_uint_lt(strlen(allow_card_titles[i]), 44);
		next = (int)part.last + 1;
	}
	ck_assert_int_eq(next - 1, block_last(BLOCK_ALLOW));
}
END_TEST

/* ---- Fences --------------------------------------------------------------------------------- */

START_TEST(a_fence_is_renamed_added_and_removed)
{
	struct answers rename = { .asker = answers_asker(), .picks = { "Fence" },
		.typed = { { "Name", "Pickets", 0 }, { "Rails of a panel", "3", 0 } } };
	struct answers add = { .asker = answers_asker(), .picks = { "Add a fence" },
		.typed = { { "Name", "Hurdles", 0 } } };
	struct answers remove = { .asker = answers_asker(),
		.picks = { "Remove a fence", "Pickets" } };
	const struct details *details;
	struct desk desk;

	desk_open(&desk, court);
	details = &desk.editor.plot->details;
	press(&desk, &rename);
	ck_assert_str_eq(details->fences[0].name, "Pickets");
	ck_assert_int_eq(block_number(&details->fences[0].block, FENCE_RAILS), 3);
	fence_is(&details->fences[0], "0,0 7,0", "1,0 2,0");
	check_one_step(&desk, "another name");
	press(&desk, &add);
	ck_assert_uint_eq(details->fence_count, 2);
	ck_assert_str_eq(details->fences[1].name, "Hurdles");
	press(&desk, &remove);
	check_says(&remove.question, "Pickets");
	check_says(&remove.question, "7 ft");
	ck_assert_uint_eq(details->fence_count, 1);
	ck_assert_str_eq(details->fences[0].name, "Hurdles");
	ck_assert_int_eq(desk.editor.position, 3);
	ck_assert(editor_take_back(&desk.editor));
	fence_is(&details->fences[0], "0,0 7,0", "1,0 2,0");
	answers_fini(&rename);
	answers_fini(&add);
	answers_fini(&remove);
	desk_close(&desk);
}
END_TEST

START_TEST(a_fence_needs_a_name)
{
	struct answers add = { .asker = answers_asker(), .picks = { "Add a fence" },
		.typed = { { "Height", "4 ft", 0 } } };
	struct desk desk;

	desk_open(&desk, court);
	press(&desk, &add);
	check_says(&add.fault.words, "Name: needed here");
	check_unchanged(&desk, "a fence without a name");
	answers_fini(&add);
	desk_close(&desk);
}
END_TEST

/* ---- Extra goods ---------------------------------------------------------------------------- */

START_TEST(extra_goods_are_added_changed_and_removed)
{
	struct answers add = { .asker = answers_asker(), .picks = { "Add extra goods" },
		.typed = { { "Name", "Boards", 0 }, { "How much", "24 each", 0 } } };
	struct answers more = { .asker = answers_asker(), .picks = { "Add extra goods" },
		.typed = { { "Name", "String", 0 }, { "How much", "100 ft", 0 } } };
	struct answers change = { .asker = answers_asker(), .picks = { "Boards" },
		.typed = { { "How much", "30 each", 0 } } };
	struct answers remove = { .asker = answers_asker(),
		.picks = { "Remove extra goods", "Boards" } };
	const struct details *details;
	struct desk desk;

	desk_open(&desk, court);
	details = &desk.editor.plot->details;
	press(&desk, &add);
	ck_assert_uint_eq(details->extra_count, 1);
	check_one_step(&desk, "extra goods");
	press(&desk, &more);
	press(&desk, &change);
	ck_assert_str_eq(details->extras[0].name, "Boards");
	ck_assert_int_eq(details->extras[0].amount.millionths, 30 * MILLION);
	ck_assert_int_eq(details->extras[0].amount.unit, AMOUNT_GOODS_EACH);
	press(&desk, &remove);
	check_says(&remove.question, "Boards: 30 each");
	check_says(&remove.question, "String: 100 ft");
	ck_assert_uint_eq(details->extra_count, 1);
	ck_assert_str_eq(details->extras[0].name, "String");
	ck_assert(editor_take_back(&desk.editor));
	ck_assert_uint_eq(details->extra_count, 2);
	ck_assert_str_eq(details->extras[0].name, "Boards");
	answers_fini(&add);
	answers_fini(&more);
	answers_fini(&change);
	answers_fini(&remove);
	desk_close(&desk);
}
END_TEST

static const struct {
	const char *name, *amount, *fault;
} bad_extras[] = {
	{ "", "24 each", "Name: needed here" },
	{ "Boards", "", "How much: needed here" },
	{ "Boards", "24 tins", "How much: found 24, expected goods such as 24 each" },
	{ "Boards", "0 each", "expected 0.001 to 100000 each, ft" },
	{ "Boards", "1,250 each", "How much: 1,250 can be read in two ways" },
};

START_TEST(extra_goods_need_a_name_and_an_amount)
{
	struct answers add = { .asker = answers_asker(), .picks = { "Add extra goods" },
		.typed = { { "Name", bad_extras[_i].name, 0 },
			{ "How much", bad_extras[_i].amount, 0 } } };
	struct desk desk;

	desk_open(&desk, court);
	press(&desk, &add);
	check_says(&add.fault.words, bad_extras[_i].fault);
	check_unchanged(&desk, "bad extra goods");
	answers_fini(&add);
	desk_close(&desk);
}
END_TEST

/* A name of blanks can be read from a file, and is not lost for another amount. */
START_TEST(a_name_that_nobody_touched_is_kept)
{
	struct answers change = { .asker = answers_asker(), .picks = { "  " },
		.typed = { { "How much", "2 each", 0 } } };
	struct desk desk;

	desk_open(&desk, court);
	details_add_extra(&editor_edit(&desk.editor)->details, memory_string("  "),
		(struct amount){ MILLION, AMOUNT_GOODS_EACH });
	press(&desk, &change);
	ck_assert_int_eq(change.refused, 0);
	ck_assert_str_eq(desk.editor.plot->details.extras[0].name, "  ");
	ck_assert_int_eq(desk.editor.plot->details.extras[0].amount.millionths, 2 * MILLION);
	answers_fini(&change);
	desk_close(&desk);
}
END_TEST

START_TEST(rates_say_what_holds_while_they_are_unset)
{
	struct answers leave = { .asker = answers_asker(), .picks = { "Hours that work takes" },
		.leave = "Hours that work takes" };
	struct desk desk;

	desk_open(&desk, court);
	book_of(&desk.editor.book, "'rates': {'block': '0.05 h per each'}");
	desk.editor.has_book = true;
	press(&desk, &leave);
	check_says(&leave.unset, "usual, by subsoil;");
	check_says(&leave.unset, ";0.05 h per each;none: in no hours;");
	answers_fini(&leave);
	desk_close(&desk);
}
END_TEST

/* ---- Leaving -------------------------------------------------------------------------------- */

START_TEST(whatever_is_left_on_the_way_changes_nothing)
{
	static const struct answers rows[] = {
		{ .picks = { "b " }, .typed = { { "Courses", "5", 0 } }, .leave = "The bed b" },
		{ .picks = { "b " }, .typed = { { "Letter", "k", 0 } }, .leave = "The bed b" },
		{ .picks = { "The plot" }, .typed = { { "Title", "Other", 0 } },
			.leave = "The plot itself" },
		{ .picks = { "The plot" }, .typed = { { "Side of a cell", "2 ft", 0 } } },
		{ .picks = { "Allowed" }, .typed = { { "Saw kerf", "1/4 in", 0 } },
			.leave = "Allowed for: walls and soil" },
		{ .picks = { "Fence" }, .typed = { { "Height", "4 ft", 0 } }, .leave = "A fence" },
		{ .picks = { "Add a fence" }, .typed = { { "Name", "Hurdles", 0 } },
			.leave = "A new fence" },
		{ .picks = { "Remove a fence" } },
		{ .picks = { "Hours" }, .typed = { { "Saw a piece", "1 h per each", 0 } },
			.leave = "Hours that work takes" },
		{ .picks = { "Add extra" }, .typed = { { "Name", "Boards", 0 } },
			.leave = "More extra goods" },
		{ .picks = { "Add" } },
		{ .picks = { "Add", "A bed" }, .typed = { { "Name", "Bay", 0 } },
			.leave = "A new bed" },
		{ .picks = { "Remove" } },
		{ .picks = { "Remove", "b " } },
	};
	struct answers answers = rows[_i];
	struct desk desk;

	answers.asker = answers_asker();
	desk_open(&desk, court);
	press(&desk, &answers);
	ck_assert_int_eq(answers.filled, 0);
	check_unchanged(&desk, "what was left");
	answers_fini(&answers);
	desk_close(&desk);
}
END_TEST

/* ---- The cell ------------------------------------------------------------------------------- */

static struct answers cell_typing(const char *cell, const char *keeps)
{
	return (struct answers){ .asker = answers_asker(), .picks = { "The plot", keeps },
		.typed = { { "Side of a cell", cell, 0 } } };
}

START_TEST(another_cell_under_the_same_cells)
{
	struct answers answers = cell_typing("2 ft", "Its cells");
	struct desk desk;

	desk_open(&desk, court);
	press(&desk, &answers);
	check_says(&answers.question, "Cells of 2 ft instead of 1 ft");
	check_says(&answers.question, "Its cells: 14 ft x 6 ft");
	check_says(&answers.question, "Its measure: 4 x 2 cells, rounded");
	ck_assert_int_eq(plot_cell(desk.editor.plot), 2 * NM_PER_FOOT);
	ck_assert_int_eq(memcmp(desk.editor.plot->ground.cells, desk.before.ground.cells, 21), 0);
	check_one_step(&desk, "another cell");
	answers_fini(&answers);
	desk_close(&desk);
}
END_TEST

START_TEST(another_cell_under_the_same_measure)
{
	struct answers answers = cell_typing("6 in", "Its measure");
	struct desk desk;

	desk_open(&desk, court);
	desk.editor.cursor = (struct place){ 4, 1 };
	press(&desk, &answers);
	ck_assert_int_eq(desk.editor.plot->ground.columns, 14);
	ck_assert_int_eq(desk.editor.plot->ground.rows, 6);
	ck_assert_int_eq(legend_cells(desk.editor.plot, 'b'), 24);
	ck_assert_int_eq(ground_cell(&desk.editor.plot->ground, desk.editor.cursor.x,
		desk.editor.cursor.y), 'S');
	check_says(&desk.editor.message, "14 x 6 cells, all as it was");
	desk.editor.cursor = (struct place){ 13, 5 };
	check_one_step(&desk, "another cell");
	ck_assert(editor_take_back(&desk.editor));
	ck_assert(ground_holds(&desk.editor.plot->ground, desk.editor.cursor.x,
		desk.editor.cursor.y));
	answers_fini(&answers);
	desk_close(&desk);
}
END_TEST

/* 7 x 3 ft, with drops 3 ft apart, a tie, and a name for the one fixture. */
static void surround(struct desk *desk)
{
	struct details *details = &editor_edit(&desk->editor)->details;

	levels_init(&details->levels, 3 * NM_PER_FOOT, 4, 2);
	for (int i = 0; i < 8; i++)
		details->levels.drops[i] = i * NM_PER_INCH;
	ties_add(&details->around.ties, (struct place){ 7, 3 }, memory_string("Pier"), NM_PER_M);
	names_add(&details->names, (struct place){ 4, 1 }, memory_string("Dial"));
	names_add(&details->names, (struct place){ 0, 0 }, memory_string("Thyme"));
	editor_stroke(&desk->editor);
}

START_TEST(what_is_around_goes_with_other_cells)
{
	struct answers answers = cell_typing("2 ft", "Its measure");
	const struct details *details;
	struct desk desk;

	desk_open(&desk, court);
	surround(&desk);
	press(&desk, &answers);
	plot_check(desk.editor.plot);
	details = &desk.editor.plot->details;
	ck_assert(place_equal(details->around.ties.items[0].at, (struct place){ 4, 2 }));
	ck_assert_int_eq(details->levels.columns, 4);
	ck_assert_int_eq(details->levels.rows, 3);
	ck_assert_int_eq(details->levels.drops[11], 7 * NM_PER_INCH);
	check_says(&desk.editor.message, "What is around goes to the nearest points");
	/* the fixture is gone, and its name with it */
	ck_assert_uint_eq(details->names.count, 1);
	ck_assert_str_eq(details->names.items[0].text, "Thyme");
	ck_assert(editor_take_back(&desk.editor));
	ck_assert_uint_eq(desk.editor.plot->details.names.count, 2);
	answers_fini(&answers);
	desk_close(&desk);
}
END_TEST

START_TEST(levels_cover_the_same_cells_of_another_size)
{
	struct answers answers = cell_typing("1 1/2 ft", "Its cells");
	struct desk desk;

	desk_open(&desk, court);
	surround(&desk);
	press(&desk, &answers);
	plot_check(desk.editor.plot);
	ck_assert_int_eq(desk.editor.plot->details.levels.columns, 5);
	ck_assert_int_eq(desk.editor.plot->details.levels.rows, 3);
	ck_assert_int_eq(desk.editor.plot->details.levels.drops[8], 7 * NM_PER_INCH);
	answers_fini(&answers);
	desk_close(&desk);
}
END_TEST

/* They mean cells that are no longer there. */
START_TEST(peg_and_mark_go_with_the_old_cells)
{
	for (int is_marked = 0; is_marked <= 1; is_marked++) {
		struct answers answers = cell_typing("2 ft", "Its measure");
		struct desk desk;

		desk_open(&desk, court);
		desk.editor.is_pegged = true;
		desk.editor.peg = (struct place){ 6, 2 };
		desk.editor.cursor = (struct place){ 4, 1 };
		if (is_marked)
			editor_mark(&desk.editor);
		press(&desk, &answers);
		ck_assert_int_eq(answers.filled, 1);
		ck_assert_int_eq(editor_state(&desk.editor), STATE_REST);
		answers_fini(&answers);
		desk_close(&desk);
	}
}
END_TEST

START_TEST(what_was_rounded_is_said)
{
	struct answers answers = cell_typing("2 ft", "Its measure");
	struct desk desk;

	desk_open(&desk, court);
	press(&desk, &answers);
	/* Of 4 x 2 cells, middles at odd feet, on old lines: every one takes the cell up and
	 * left. */
	ck_assert_int_eq(memcmp(desk.editor.plot->ground.cells, "bb.p" "ll.p", 8), 0);
	/* Over one kind of ground lies only bb/bb, and the right column and the lower row reach
	 * over. */
	check_says(&desk.editor.message, "4 x 2 cells; 7 ");
	check_says(&desk.editor.message, "8 ft x 4 ft, was 7 ft x 3 ft. b 8.0 sq ft, was 6.0 sq "
		"ft. p 8.0 sq ft, was 6.0 sq ft. S 0.0 sq ft, was 1.0 sq ft. l 8.0 sq ft, was 3.0 "
		"sq ft. ");
	check_says(&desk.editor.message, "Fences");
	check_says(&desk.editor.message, "1 gate");
	fence_is(&desk.editor.plot->details.fences[0], "0,0 4,0", "");
	answers_fini(&answers);
	desk_close(&desk);
}
END_TEST

/* Every other column is gone, and what is left of two rows is twice as wide. */
START_TEST(of_many_areas_four_are_told_and_the_others_counted)
{
	static const struct { const char *row, *last, *others; } rows[] = {
		{ "abpl", "l 0.0 sq ft, was 2.0 sq ft.", NULL },
		{ "abplS", "l 0.0 sq ft, was 2.0 sq ft.", " 1 other area changed." },
		{ "abcplmS", "p 0.0 sq ft, was 2.0 sq ft.", " 3 other areas changed." },
	};

	for (int i = 0; i < 3; i++) {
		struct answers answers = cell_typing("2 ft", "Its measure");
		struct desk desk;

		desk_open(&desk, (const char *const[]){ rows[i].row, rows[i].row, NULL });
		press(&desk, &answers);
		check_says(&desk.editor.message, rows[i].last);
		if (rows[i].others)
			check_says(&desk.editor.message, rows[i].others);
		else
			ck_assert_ptr_null(strstr(desk.editor.message.bytes, "changed"));
		answers_fini(&answers);
		desk_close(&desk);
	}
}
END_TEST

START_TEST(too_many_cells_are_refused_and_the_others_left_to_choose)
{
	struct answers measure = cell_typing("1 in", "Its measure");
	struct answers cells = cell_typing("1 in", "Its cells");
	struct desk desk;
	struct plot plot;

	desk_open(&desk, court);
	plot_from_rows(&plot, court);
	ground_fini(&plot.ground);
	ground_init(&plot.ground, 171, 1);
	plot_fini(&desk.before);
	desk_take(&desk, &plot);
	press(&desk, &measure);
	check_says(&measure.question, "2052 x 12 cells: too many");
	check_says(&measure.fault.words, "Side of a cell: the ground would have 2052 x 12 cells");
	ck_assert_str_eq(measure.kept.bytes, "1 in");
	check_unchanged(&desk, "too many cells");
	press(&desk, &cells);
	ck_assert_int_eq(cells.filled, 1);
	check_one_step(&desk, "small cells");
	answers_fini(&measure);
	answers_fini(&cells);
	desk_close(&desk);
}
END_TEST

/* The mirror that is set in the same card is the one that the ground is laid on. */
START_TEST(a_mirror_set_with_the_cell_holds_for_the_new_cells)
{
	struct answers answers = cell_typing("8 in", "Its measure");
	struct desk desk;
	struct mirror mirror;

	answers.typed[1] = (struct typing){ "Mirror", "left-right", 0 };
	answers.typed[2] = (struct typing){ "Axis, in half cells", "5,1", 0 };
	desk_open(&desk, (const char *const[]){ "bppbl..", NULL });
	/* Columns 1 to 3 mirror about the middle of the third. */
	editor_edit(&desk.editor)->ground.cells[0] = 'l';
	editor_edit(&desk.editor)->ground.cells[1] = 'b';
	press(&desk, &answers);
	ck_assert_int_eq(answers.filled, 1);
	mirror = mirror_of(desk.editor.plot);
	/* 2 1/2 ft are 7 1/2 half cells of 4 in, rounded up. */
	ck_assert_int_eq(mirror.across, 8);
	ck_assert_int_eq(mirror_faults(&mirror, &desk.editor.plot->ground), 0);
	answers_fini(&answers);
	desk_close(&desk);
}
END_TEST

/* Of the court nothing is set that has another default in metric plots, but a block and a height of
 * its own. */
START_TEST(other_units_say_how_many_defaults_change)
{
	struct answers answers = { .asker = answers_asker(), .picks = { "The plot" },
		.typed = { { "Units shown", "metric", 0 } } };
	const struct details *details;
	char words[80];
	struct desk desk;
	int count = 0;

	desk_open(&desk, court);
	press(&desk, &answers);
	details = &desk.editor.plot->details;
	for (enum attribute a = block_first(BLOCK_ALLOW); a <= FENCE_LEAF_FROM; a++)
		count += attribute_is_rounder(a) &&
			!block_value(block_of(desk.editor.plot, attribute_block(a)), a)->set;
	ck_assert_uint_eq(details->legend_count, 4);
	ck_assert_uint_eq(details->fence_count, 1);
	ck_assert_int_ge(count, 50);
	snprintf(words, sizeof words, "Now metric: %d values that are not set have the defaults",
		count);
	check_says(&desk.editor.message, words);
	answers_fini(&answers);
	answers = (struct answers){ .asker = answers_asker(), .picks = { "The plot" },
		.typed = { { "Units shown", "imperial", 0 } } };
	plot_set(editor_edit(&desk.editor), 0, ALLOW_KERF, "1/4 in");
	press(&desk, &answers);
	snprintf(words, sizeof words, "Now imperial: %d values", count - 1);
	check_says(&desk.editor.message, words);
	answers_fini(&answers);
	desk_close(&desk);
}
END_TEST

START_TEST(other_units_change_no_value)
{
	struct answers answers = { .asker = answers_asker(), .picks = { "The plot" },
		.typed = { { "Units shown", "metric", 0 } } };
	struct desk desk;

	desk_open(&desk, court);
	press(&desk, &answers);
	ck_assert_int_eq(answers.filled, 1);
	ck_assert_int_eq(answers.asked, 1);
	ck_assert_int_eq(plot_units(desk.editor.plot), UNITS_METRIC);
	ck_assert_int_eq(plot_cell(desk.editor.plot), NM_PER_FOOT);
	check_one_step(&desk, "other units");
	answers_fini(&answers);
	desk_close(&desk);
}
END_TEST

START_TEST(a_number_alone_is_in_the_units_just_chosen)
{
	struct answers answers = { .asker = answers_asker(), .picks = { "The plot", "Its measure" },
		.typed = { { "Units shown", "metric", 0 }, { "Side of a cell", "250", 0 } } };
	struct desk desk;

	desk_open(&desk, court);
	press(&desk, &answers);
	ck_assert_int_eq(answers.filled, 1);
	ck_assert_int_eq(plot_cell(desk.editor.plot), 250 * NM_PER_MM);
	answers_fini(&answers);
	desk_close(&desk);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("cards");
	TCase *fences = suite_case(suite, "fences"), *fields = suite_case(suite, "fields"),
		*notes = suite_case(suite, "notes"), *extras = suite_case(suite, "extras");
	TCase *legend = suite_case(suite, "legend"), *cell = suite_case(suite, "cell");

	tcase_add_test(fields, a_bare_number_that_no_unit_makes_good_is_told_its_range);
	/* services, the last, have no card */
	tcase_add_loop_test(fields, a_good_value_is_set_in_one_step, 0, SERVICE_DEPTH);
	tcase_add_loop_test(fields, a_bad_value_is_refused_in_full_and_kept_as_typed, 0,
		SERVICE_DEPTH);
	tcase_add_loop_test(fields, an_emptied_field_is_unset_unless_it_is_needed, 0,
		SERVICE_DEPTH);
	tcase_add_test(fields, a_number_alone_is_taken_in_the_fields_unit);
	tcase_add_loop_test(fields, what_an_unset_field_says_fits_in_it, 0, ATTRIBUTES);
	tcase_add_test(fields, unset_fields_say_their_defaults_in_the_plots_units);
	tcase_add_test(fields, a_card_shows_the_price_books_value_where_the_plot_sets_none);
	tcase_add_test(fields, what_nobody_touched_stays_as_it_is);
	tcase_add_test(fields, cards_of_what_is_allowed_for_share_out_all_of_it);
	tcase_add_test(fences, a_fence_is_renamed_added_and_removed);
	tcase_add_test(fences, a_fence_needs_a_name);
	tcase_add_test(extras, extra_goods_are_added_changed_and_removed);
	tcase_add_loop_test(extras, extra_goods_need_a_name_and_an_amount, 0, 5);
	tcase_add_test(extras, a_name_that_nobody_touched_is_kept);
	tcase_add_test(extras, rates_say_what_holds_while_they_are_unset);
	tcase_add_loop_test(notes, notes_are_added_changed_and_removed_with_the_rest, 0,
		BLOCK_RATES);
	tcase_add_test(notes, a_note_too_long_is_refused_and_nothing_else_set);
	tcase_add_test(notes, notes_beyond_the_first_hundred_stay_in_their_order);
	tcase_add_test(legend, an_entry_is_added_with_a_free_letter_and_taken_in_hand);
	tcase_add_loop_test(legend, a_new_entry_needs_a_name_and_a_free_letter_of_its_class, 0, 7);
	tcase_add_test(legend, no_entry_is_added_where_all_letters_are_taken);
	tcase_add_test(legend, another_letter_goes_on_the_ground_and_in_the_hand);
	tcase_add_test(legend, an_entry_may_keep_its_letter_but_not_take_anothers);
	tcase_add_loop_test(legend, a_removed_entry_leaves_its_cells_as_one_chooses, 0, 2);
	tcase_add_test(legend, an_entry_without_cells_goes_without_a_question);
	tcase_add_test(legend, an_empty_legend_offers_nothing_to_remove);
	tcase_add_loop_test(legend, whatever_is_left_on_the_way_changes_nothing, 0, 14);
	tcase_add_test(cell, another_cell_under_the_same_cells);
	tcase_add_test(cell, another_cell_under_the_same_measure);
	tcase_add_test(cell, what_is_around_goes_with_other_cells);
	tcase_add_test(cell, levels_cover_the_same_cells_of_another_size);
	tcase_add_test(cell, peg_and_mark_go_with_the_old_cells);
	tcase_add_test(cell, what_was_rounded_is_said);
	tcase_add_test(cell, of_many_areas_four_are_told_and_the_others_counted);
	tcase_add_test(cell, too_many_cells_are_refused_and_the_others_left_to_choose);
	tcase_add_test(cell, a_mirror_set_with_the_cell_holds_for_the_new_cells);
	tcase_add_test(cell, other_units_say_how_many_defaults_change);
	tcase_add_test(cell, other_units_change_no_value);
	tcase_add_test(cell, a_number_alone_is_in_the_units_just_chosen);
	return suite;
}
