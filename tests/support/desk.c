#include "support/desk.h"
#include "support/plot_check.h"

#include "support/plots.h"
#include "support/scratch.h"

#include <check.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static const char *answer_next(struct desk *b, const char *asked)
{
	size_t length = strlen(b->all_asked);

	snprintf(b->asked, sizeof b->asked, "%s", asked);
	snprintf(b->all_asked + length, sizeof b->all_asked - length, "%s\n", asked);
	ck_assert_msg(b->answers && *b->answers, "no answer was written down for: %s", asked);
	return *b->answers++;
}

static void offer(struct desk *b, const char *one, const char *other)
{
	size_t length = strlen(b->offered);

	snprintf(b->offered + length, sizeof b->offered - length, "%s%s%s\n", one,
		other ? ": " : "", other ? other : "");
}

static int choose(struct asker *asker, const struct question *question)
{
	struct desk *b = (struct desk *)asker;
	const char *answer = answer_next(b, question->text);

	b->offered[0] = '\0';
	snprintf(b->first, sizeof b->first, "%s", question->answers[question->first]);
	for (int i = 0; i < question->count; i++)
		offer(b, question->answers[i], question->notes ? question->notes[i] : NULL);
	if (!*answer)
		return ANSWER_NONE;
	for (int i = 0; i < question->count; i++)
		if (strcmp(question->answers[i], answer) == 0)
			return i;
	ck_abort_msg("no \"%s\" to pick of:\n%s", answer, b->offered);
}

static int field_find(const struct card *card, const char *label, size_t length)
{
	for (int i = 0; i < card->count; i++)
		if (strlen(card->fields[i].label) == length &&
			strncmp(card->fields[i].label, label, length) == 0)
			return i;
	ck_abort_msg("no field %.*s in \"%s\"", (int)length, label, card->title);
}

/* Types "Label: text; Label: text". */
static void type(struct card *card, const char *answer)
{
	while (*answer) {
		size_t label = strcspn(answer, ":");
		const char *text = answer + label + 1 + strspn(answer + label + 1, " ");
		size_t length = strcspn(text, ";");
		int field = field_find(card, answer, label);
		char *typed = strndup(text, length);

		card_type(card, field, typed);
		if (card->changed)
			card->changed(card, field);
		free(typed);
		answer = text + length + strspn(text + length, "; ");
	}
}

static bool fill(struct asker *asker, struct card *card)
{
	struct desk *b = (struct desk *)asker;
	struct fault fault = { .field = 0 };
	bool is_taken = false;

	b->offered[0] = '\0';
	for (int i = 0; i < card->count; i++)
		offer(b, card->fields[i].label, card->fields[i].typed);
	while (!is_taken) {
		const char *answer = answer_next(b, card->title);

		if (!*answer)
			break;
		type(card, answer);
		is_taken = card->accept(card, &fault);
		ck_assert(fault.field >= 0 && fault.field < card->count);
		snprintf(b->fault, sizeof b->fault, "%s", is_taken ? "" : fault.words.bytes);
	}
	if (card->onward)
		*card->onward = (struct onward){ .goes_on = is_taken }; /* by Enter */
	fault_fini(&fault);
	return is_taken;
}

static bool await(struct asker *asker, struct task *task)
{
	return !((struct desk *)asker)->gives_up && task->run(task);
}

static void pause_it(struct asker *asker)
{
	((struct desk *)asker)->pauses++;
}

static void repaint(struct asker *asker)
{
	((struct desk *)asker)->repaints++;
}

void desk_refresh(struct desk *b)
{
	editor_draw(&b->editor);
	ck_assert(editor_refresh(&b->editor));
	ck_assert(editor_refresh_pages(&b->editor));
}

struct desk *desk_in_sun(const char *latitude)
{
	struct desk *b = desk_new((const char *[]){ "lll.....", "lll.....", "........", "........",
		".....bbb", ".....bbb", "SSSSSSSS", NULL });

	plot_set(editor_edit(&b->editor), 'S', FIXTURE_HEIGHT, "9 ft");
	if (latitude)
		plot_set(editor_edit(&b->editor), 0, HEAD_SITE, latitude);
	editor_stroke(&b->editor);
	desk_refresh(b);
	return b;
}

struct desk *desk_open(const char *path)
{
	struct desk *b = calloc(1, sizeof *b);

	b->asker = (struct asker){ choose, fill, await, pause_it, repaint };
	b->path = strdup(path);
	editor_init(&b->editor, &b->asker, path);
	return b;
}

struct desk *desk_new(const char *const *rows)
{
	char *folder = scratch_new(), path[4200];
	struct desk *b;
	struct plot plot;

	snprintf(path, sizeof path, "%s/garden.plot", folder);
	b = desk_open(path);
	b->folder = folder;
	plot_from_rows(&plot, rows);
	editor_take(&b->editor, &plot, true);
	b->editor.has_begun = true;
	desk_refresh(b);
	return b;
}

void desk_answered(struct desk *b)
{
	if (b->answers)
		ck_assert_msg(!*b->answers, "never asked for: %s", *b->answers);
	b->answers = NULL;
}

void desk_free(struct desk *b)
{
	desk_answered(b);
	editor_fini(&b->editor);
	scratch_remove(b->folder);
	free(b->path);
	free(b);
}

void desk_answer(struct desk *b, const char *const *answers)
{
	b->answers = answers;
	b->all_asked[0] = '\0';
}

/* An act ends its own strokes: it leaves nothing changed that would be recorded with the next
 * one's. */
static void check_ended(struct desk *b, bool was_edited)
{
	if (!was_edited && !b->editor.is_dragging)
		ck_assert_msg(!editor_stroke(&b->editor), "a stroke was not ended");
	desk_refresh(b);
}

void desk_press(struct desk *b, int key)
{
	bool was_edited = b->editor.is_edited;

	acts_press(&b->editor, key);
	check_ended(b, was_edited);
}

void desk_do(struct desk *b, enum act_id act)
{
	bool was_edited = b->editor.is_edited;

	acts_do(&b->editor, act);
	check_ended(b, was_edited);
}

void desk_type(struct desk *b, const char *characters)
{
	for (; *characters; characters++)
		desk_press(b, *characters);
}

void desk_check(struct desk *b, const char *const *rows)
{
	const struct ground *ground = &b->editor.plot->ground;
	int count = 0;

	plot_check(b->editor.plot);
	while (rows[count])
		count++;
	ck_assert_int_eq(ground->rows, count);
	for (int y = 0; y < count; y++) {
		ck_assert_uint_eq(strlen(rows[y]), (size_t)ground->columns);
		ck_assert_msg(memcmp(ground->cells + (size_t)y * (size_t)ground->columns, rows[y],
				(size_t)ground->columns) == 0, "row %d is %.*s, not %s", y,
			ground->columns, ground->cells + (size_t)y * (size_t)ground->columns,
			rows[y]);
	}
}

void desk_asked(struct desk *b, const char *words)
{
	ck_assert_msg(strstr(b->asked, words) != NULL, "asked \"%s\", not \"%s\"", b->asked, words);
}

const struct page *desk_page(const struct desk *b, const char *name)
{
	for (int i = 0; i < pages_count(); i++)
		if (strcmp(page_name(i), name) == 0)
			return &b->editor.pages.pages[i];
	ck_abort_msg("no page %s", name);
}

const struct line *desk_line(const struct desk *b, const char *page, const char *under,
	const char *label)
{
	const struct page *p = desk_page(b, page);

	for (size_t i = 0; i < p->count; i++)
		if (strcmp(p->lines[i].label, label) == 0 && strcmp(p->lines[i].under, under) == 0)
			return &p->lines[i];
	ck_abort_msg("no line \"%s\" under \"%s\" on page %s", label, under, page);
}

void desk_says(struct desk *b, const char *words)
{
	const char *said = b->editor.message.bytes;

	ck_assert_msg(strstr(said, words) != NULL, "said \"%s\", not \"%s\"", said, words);
}

/* Words with FOLDER in place of the desk's folder; they hold until the next ones. */
static const char *without_folder(const struct desk *b, const char *words)
{
	static char cut[4096];
	size_t folder = b->folder ? strlen(b->folder) : 0;
	struct text text = TEXT_EMPTY;

	while (*words)
		if (folder && strncmp(words, b->folder, folder) == 0) {
			text_add(&text, "FOLDER");
			words += folder;
		} else {
			text_add_bytes(&text, words++, 1);
		}
	snprintf(cut, sizeof cut, "%s", text.bytes);
	text_fini(&text);
	return cut;
}

void desk_says_whole(struct desk *b, const char *words)
{
	ck_assert_str_eq(without_folder(b, b->editor.message.bytes), words);
}

void desk_asked_whole(struct desk *b, const char *words)
{
	ck_assert_str_eq(without_folder(b, b->asked), words);
}
