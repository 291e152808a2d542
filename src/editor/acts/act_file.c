#include "base/path.h"
#include "report/kind.h"
#include "editor/acts/act_groups.h"
#include "editor/acts/deliver.h"
#include "editor/acts/shared.h"
#include "editor/cards/card_ask.h"
#include "editor/cards/plot_card.h"
#include "editor/price_book.h"

#include <stdlib.h>

bool act_may_write_over(struct editor *editor, const char *sentence)
{
	static const char *const answers[] = { "Leave that file alone", "Write over it" };
	const struct question question = { .text = sentence, .answers = answers, .count = 2 };

	return editor->asker->choose(editor->asker, &question) == 1;
}

/* Asks where the file is not as it was left here. True where it may be written. */
static bool may_save(struct editor *editor)
{
	static const char *const changed[] = { "Keep the file as it is", "Write over it",
		"Save as another file" };
	static const char *const gone[] = { "Leave it gone", "Write it again",
		"Save as another file" };
	enum { WRITE = 1, ANOTHER = 2 };
	bool is_there = file_stamp(editor->store.path).exists;
	const struct question question = { .answers = is_there ? changed : gone, .count = 3,
		.text = is_there ? "Somebody else has changed the file since it was read here." :
			"Somebody else has taken the file away since it was read here." };
	int answer = store_is_changed(&editor->store) ?
		editor->asker->choose(editor->asker, &question) : WRITE;

	if (answer == ANOTHER)
		acts_run(editor, ACT_SAVE_AS);
	else if (answer != WRITE)
		editor_say(editor, "Not saved: the file stays as somebody else left it.");
	return answer == WRITE;
}

bool act_save_plot(struct editor *editor)
{
	struct file_error error;

	if (!may_save(editor))
		return editor_is_saved(editor);
	if (!store_save(&editor->store, editor->plot, &error)) {
		editor_say(editor, "Not saved: %s.", error.sentence);
		return false;
	}
	editor_saved(editor);
	editor_say(editor, "Saved in %s.", editor->store.path);
	return true;
}

static void act_save(struct editor *editor)
{
	act_save_plot(editor);
}

/* What is written, while its file is asked for. */
struct writing {
	struct editor *editor;
	unsigned parts; /* of the text */
	const char *path;
};

static void print(struct sink *out, const void *context)
{
	const struct writing *writing = context;
	const struct editor *editor = writing->editor;

	report_print(report_kind_of(writing->path), writing->parts, out, editor->plot,
		&editor->takeoff, editor->name);
}

static void say_written(struct editor *editor, const char *path)
{
	int snags = (int)editor->takeoff.snags.count;

	if (!editor->takeoff.complete)
		editor_say(editor, "Takeoff written to %s. It is incomplete: see the snags.", path);
	else if (snags)
		editor_say(editor, "Takeoff written to %s. %d %s: read before anything is bought.",
			path, snags, snags == 1 ? "snag" : "snags");
	else
		editor_say(editor, "Takeoff written to %s.", path);
	if (editor->book_name && !editor->has_book)
		text_add_sentence(&editor->message, "It has no prices: %s is not there, or cannot "
			"be read.", editor->book_name);
}

static bool takeoff_write(struct editor *editor, unsigned parts, const char *path,
	struct fault *fault)
{
	const struct writing writing = { editor, parts, path };

	if (parts != PARTS_ALL && report_kind_of(path) != REPORT_TEXT)
		return fault_set(fault, 0, "A part is text: its file's name ends otherwise, as in "
			".txt.");
	price_book_recheck(editor);
	if (!act_deliver(editor, "Counting and writing the takeoff", path,
		&(struct file_content){ print, &writing }, fault))
		return false;
	say_written(editor, path);
	return true;
}

static bool takeoff_accept(struct card *card, struct fault *fault)
{
	const struct writing *writing = card->owner;
	char *path;
	bool done;

	if (!card_file_read(card, 0, &path, fault))
		return false;
	done = takeoff_write(writing->editor, writing->parts, path, fault);
	free(path);
	return done;
}

/* Asks which parts: all, or one. 0: none, it was left. */
static unsigned parts_ask(struct editor *editor)
{
	const char *answers[PARTS + 1] = { "All of it" }, *notes[PARTS + 1] = { "" };
	const struct question question = { .text = "Write which part of the takeoff?",
		.answers = answers, .notes = notes, .count = PARTS + 1 };
	int answer;

	for (int part = 0; part < PARTS; part++) {
		answers[part + 1] = part_title((enum part)part);
		notes[part + 1] = part_tells((enum part)part);
	}
	answer = editor->asker->choose(editor->asker, &question);
	return answer == ANSWER_NONE ? 0 : answer == 0 ? PARTS_ALL : 1u << (answer - 1);
}

/* "court.txt", "court-shopping.txt". */
static const char *paper_path(struct editor *editor, unsigned parts)
{
	const char *plot = editor->store.path;
	int stem = (int)path_stem(plot, ".plot");

	for (int part = 0; part < PARTS; part++)
		if (parts == 1u << part)
			return arena_print(&editor->words, "%.*s-%s.txt", stem, plot,
				part_word((enum part)part));
	return arena_print(&editor->words, "%.*s.txt", stem, plot);
}

static void act_takeoff(struct editor *editor)
{
	struct writing writing = { editor, parts_ask(editor), NULL };
	struct field_spec file;

	if (writing.parts == 0)
		return;
	file = card_file(paper_path(editor, writing.parts));
	file.meaning = writing.parts == PARTS_ALL ?
		"A spreadsheet takes .csv, programs .json." : "As text.";
	card_ask(editor, &(struct card_spec){ .title = "Write the takeoff to a file",
		.done = "write it", .fields = &file, .count = 1, .accept = takeoff_accept,
		.owner = &writing });
}

static void act_prices(struct editor *editor)
{
	if (prices_card_fill(editor))
		act_card_end(editor);
}

/* The key that brings the list picks its first answer too: pressed twice it saves. */
static void act_files(struct editor *editor)
{
	static const struct choice choices[] = {
		{ .words = "Save", .act = ACT_SAVE, .by = ACT_FILES },
		{ .words = "Save as another file", .act = ACT_SAVE_AS },
		{ .words = "Write a copy", .act = ACT_COPY },
		{ .words = "Write the takeoff: what to buy and do", .act = ACT_TAKEOFF },
		{ .words = "Write a drawing: the plan to scale", .act = ACT_DRAWING },
		{ .words = "Price book", .act = ACT_PRICES },
	};

	choice_ask(editor, arena_print(&editor->words, "%s:", editor->name), choices,
		sizeof choices / sizeof *choices);
}

static void act_leave(struct editor *editor)
{
	static const char *const answers[] = { "Save and leave", "Leave without saving", "Stay" };
	enum { SAVE, LEAVE };
	const struct question question = { .text = "Not saved since the last change. Leave?",
		.answers = answers, .count = 3 };
	int answer = editor_is_saved(editor) || editor->is_looking ? LEAVE :
		editor->asker->choose(editor->asker, &question);

	if (answer == LEAVE && !editor->is_looking)
		store_forget(&editor->store);
	editor->is_over = answer == LEAVE || (answer == SAVE && act_save_plot(editor));
}

static const struct act acts[] = {
	{ .id = ACT_FILES, .keys = { { '>', '>' }, { PRESS_F2, PRESS_F2 } }, .key_name = "> F2",
		.key_said = ">", .name = "Files", .wish = "save, or write something out",
		.words = "output", .hints = { [STATE_REST] = "save" }, .rank = 1,
		.run = act_files },
	{ .id = ACT_SAVE, .key_name = ">", .name = "Save",
		.wish = "save the plot",
		.words = "write store keep file", .writes = true, .run = act_save },
	{ .id = ACT_TAKEOFF, .key_name = ">", .name = "Takeoff",
		.wish = "write out the quantities",
		.words = "print export report list shopping buy materials json csv "
			"spreadsheet text",
		.run = act_takeoff },
	{ .id = ACT_PRICES, .key_name = ">", .name = "Price book",
		.wish = "set the price book", .words = "price prices cost costs money goods",
		.writes = true, .run = act_prices },
	{ .id = ACT_LEAVE, .keys = ONE_KEY('<'), .key_name = "<", .name = "Leave",
		.wish = "leave the program",
		.words = "quit exit close end stop bye",
		.hints = { [STATE_REST] = "leave" }, .rank = 2,
		.run = act_leave },
};
const struct act_group acts_of_file = ACT_GROUP("File", acts);
