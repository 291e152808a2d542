#include "editor/sheets/entry_sheet.h"
#include "base/memory.h"
#include "base/show.h"
#include "plot/edit/legend.h"
#include "editor/ask/block_sheet.h"
#include "editor/sheets/metric.h"

#include <stdlib.h>
#include <string.h>

enum { NAME, LETTER, ENTRY_BLOCK }; /* fields; the block's follow from ENTRY_BLOCK on */

static const struct value_rule name_rule = { .kind = VALUE_TEXT, .least = 1, .most = NAME_MOST };
static const struct value_rule letter_rule = { .kind = VALUE_TEXT, .least = 1, .most = 1 };

/* The sheet's owner. */
struct entering {
	struct editor *editor;
	enum plot_class class;
	char letter; /* the entry's so far; NUL: it is a new one */
};

/* ---- The sheet ------------------------------------------------------------------------------ */

static void free_letters_add(struct text *out, const struct details *details, enum plot_class class)
{
	for (int c = '!'; c <= '~'; c++)
		if (class_takes_letter(class, (char)c) && legend_index(details, (char)c) < 0)
			text_print(out, " %c", c);
}

static bool letter_check(const struct sheet *sheet, int field, const struct value *value,
	struct fault *fault)
{
	const struct entering *entering = sheet->owner;
	const struct details *details = &entering->editor->plot.details;
	bool is_capital = entering->class == CLASS_FIXTURE;
	char letter;
	struct text left = TEXT_EMPTY;

	if (field != LETTER)
		return true;
	letter = value->as.text[0];
	if (class_takes_letter(entering->class, letter) &&
		(letter == entering->letter || legend_index(details, letter) < 0))
		return true;
	free_letters_add(&left, details, entering->class);
	if (class_takes_letter(entering->class, letter))
		fault_set(fault, field, "Letter: %c is taken; free are%s", letter,
			left.length ? left.bytes : " none");
	else
		fault_set(fault, field, "Letter: found %s, expected a %s letter, as a %s has it; "
			"free are%s", value->as.text, is_capital ? "capital" : "small",
			class_word(entering->class), left.length ? left.bytes : " none");
	text_fini(&left);
	return false;
}

/* Takes over the name and what is in the block. */
static void entry_set(struct editor *editor, struct entering *entering, char letter, char *name,
	const struct block *block)
{
	struct details *details = &editor->plot.details;
	struct entry *entry;

	if (!entering->letter) {
		entry = details_add_entry(details, entering->class, letter, NULL);
	} else {
		if (letter != entering->letter)
			legend_reletter(&editor->plot, entering->letter, letter);
		entry = &details->legend[legend_index(details, letter)];
	}
	free(entry->name);
	entry->name = name;
	block_fini(&entry->block);
	entry->block = *block;
	if (!entering->letter || editor->hand == entering->letter)
		editor->hand = letter;
}

/* The block as it is so far; of a new entry one that is empty, but in a metric plot for its rounder
 * values. Owned by the caller. */
static struct block block_of(const struct entering *entering)
{
	const struct plot *plot = &entering->editor->plot;
	const struct entry *entry = plot_entry(plot, entering->letter);
	struct block block = { .kind = class_block(entering->class) };

	if (entry)
		return block_copy(&entry->block);
	if (plot_units(plot) == UNITS_METRIC)
		metric_fill(&block);
	return block;
}

/* A name that nobody touched is good, be it nothing but blanks. */
static bool name_read(const struct sheet *sheet, struct value *name, struct fault *fault)
{
	const struct entering *entering = sheet->owner;
	const struct entry *entry = plot_entry(&entering->editor->plot, entering->letter);
	struct value was = { .set = entry != NULL, .as.text = entry ? entry->name : NULL };

	if (!entry || !sheet_says(sheet, NAME, &was))
		return sheet_read(sheet, NAME, name, fault);
	*name = value_copy(VALUE_TEXT, &was);
	return true;
}

static bool entry_accept(struct sheet *sheet, struct fault *fault)
{
	struct entering *entering = sheet->owner;
	struct block block = block_of(entering);
	const struct block_part whole = block_whole(block.kind);
	struct value name = { .set = false }, letter = { .set = false };
	bool is_good = name_read(sheet, &name, fault) &&
		sheet_read(sheet, LETTER, &letter, fault) &&
		block_fields_read(sheet, ENTRY_BLOCK, &block, &whole, fault);

	if (is_good)
		entry_set(entering->editor, entering, letter.as.text[0],
			memory_string(name.as.text), &block);
	else
		block_fini(&block);
	value_fini(VALUE_TEXT, &name);
	value_fini(VALUE_TEXT, &letter);
	return is_good;
}

static void field_set(struct sheet *sheet, int field, const char *label,
	const struct value_rule *rule, const char *typed)
{
	sheet->fields[field].label = label;
	sheet->fields[field].rule = rule;
	sheet->fields[field].required = true;
	sheet_type(sheet, field, typed);
}

static bool entry_fill(struct entering *entering, const char *title, const char *name, char letter)
{
	struct block block = block_of(entering);
	const struct block_part whole = block_whole(block.kind);
	struct sheet sheet;
	bool is_filled;

	sheet_init(&sheet, ENTRY_BLOCK + block_fields(&block, &whole));
	sheet.title = title;
	sheet.done = entering->letter ? "set all this" : "add it";
	sheet.units = plot_units(&entering->editor->plot);
	sheet.accept = entry_accept;
	sheet.check = letter_check;
	sheet.owner = entering;
	field_set(&sheet, NAME, "Name", &name_rule, name);
	field_set(&sheet, LETTER, "Letter", &letter_rule, (const char[]){ letter, '\0' });
	block_fields_set(&sheet, ENTRY_BLOCK, &block, &whole);
	is_filled = entering->editor->asker->fill(entering->editor->asker, &sheet);
	sheet_fini(&sheet);
	block_fini(&block);
	return is_filled;
}

bool entry_sheet_change(struct editor *editor, char letter)
{
	const struct entry *entry = plot_entry(&editor->plot, letter);
	struct entering entering = { editor, entry->class, letter };
	struct text title = TEXT_EMPTY;
	bool is_filled;

	text_print(&title, "The %s %c", class_word(entry->class), letter);
	is_filled = entry_fill(&entering, title.bytes, entry->name, letter);
	text_fini(&title);
	return is_filled;
}

/* ---- Adding --------------------------------------------------------------------------------- */

static const struct {
	const char *answer, *note, *title;
} classes[] = {
	[CLASS_BED] = { "A bed", "planted; raised or level", "A new bed" },
	[CLASS_PATH] = { "A path", "crushed stone", "A new path" },
	[CLASS_LAWN] = { "A lawn", "turf or seed", "A new lawn" },
	[CLASS_FIXTURE] = { "A fixture", "stands on the ground", "A new fixture" },
};
enum { ENTRY_CLASSES = CLASS_FIXTURE + 1 };

static int class_ask(struct editor *editor)
{
	const char *answers[ENTRY_CLASSES], *notes[ENTRY_CLASSES];
	struct question question = { .text = "Add what to the legend?", .answers = answers,
		.notes = notes, .count = ENTRY_CLASSES };

	for (int i = 0; i < ENTRY_CLASSES; i++) {
		answers[i] = classes[i].answer;
		notes[i] = classes[i].note;
	}
	return editor->asker->choose(editor->asker, &question);
}

bool entry_sheet_add(struct editor *editor)
{
	struct entering entering = { .editor = editor };
	int answer = class_ask(editor);
	char letter;

	if (answer == ANSWER_NONE)
		return false;
	entering.class = (enum plot_class)answer;
	letter = legend_free_letter(&editor->plot.details, entering.class);
	if (!letter) {
		editor_say(editor, "All %s letters are taken; remove an entry first.",
			entering.class == CLASS_FIXTURE ? "capital" : "small");
		return false;
	}
	return entry_fill(&entering, classes[answer].title, "", letter);
}

/* ---- Removing ------------------------------------------------------------------------------- */

static void cells_add(struct text *out, int64_t cells)
{
	show_count(out, cells);
	text_add(out, cells == 1 ? " cell" : " cells");
}

/* Asks for one of the legend's letters; where there is a `goes`, for another one or for open
 * ground. NUL: the question was left. */
static char letter_ask(struct editor *editor, const char *words, char goes)
{
	const struct details *details = &editor->plot.details;
	struct arena arena = ARENA_EMPTY;
	size_t most = details->legend_count + 1;
	const char **answers = arena_new(&arena, most, sizeof *answers);
	const char **notes = arena_new(&arena, most, sizeof *notes);
	char *letters = arena_new(&arena, most, 1);
	struct question question = { .text = words, .answers = answers, .notes = notes };
	int answer;

	if (goes) {
		letters[question.count] = OPEN_GROUND;
		answers[question.count] = ". open ground";
		notes[question.count++] = "";
	}
	for (size_t i = 0; i < details->legend_count; i++) {
		const struct entry *entry = &details->legend[i];

		if (entry->letter == goes)
			continue;
		if (!goes && entry->letter == editor->hand)
			question.first = question.count;
		letters[question.count] = entry->letter;
		answers[question.count] = arena_print(&arena, "%c %s", entry->letter, entry->name);
		notes[question.count++] = class_word(entry->class);
	}
	answer = editor->asker->choose(editor->asker, &question);
	goes = answer == ANSWER_NONE ? '\0' : letters[answer];
	arena_clear(&arena);
	return goes;
}

bool entry_sheet_remove(struct editor *editor)
{
	char goes = letter_ask(editor, "Remove which entry?", '\0'), to = OPEN_GROUND;
	struct text words = TEXT_EMPTY;
	int64_t cells;

	if (!goes)
		return false;
	cells = legend_cells(&editor->plot, goes);
	editor_name_letter(editor, goes, &words);
	text_add(&words, " goes. What shall its ");
	cells_add(&words, cells);
	text_add(&words, " be?");
	if (cells)
		to = letter_ask(editor, words.bytes, goes);
	text_fini(&words);
	if (!to)
		return false;
	legend_remove(&editor->plot, goes, to);
	if (editor->hand == goes)
		editor->hand = to;
	return true;
}
