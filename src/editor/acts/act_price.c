#include "editor/acts/act_groups.h"
#include "editor/acts/shared.h"
#include "editor/cards/book_card.h"
#include "editor/cards/plant_card.h"
#include "editor/cards/price_card.h"
#include "editor/price_book.h"
#include "prices/prices.h"
#include "report/words/item_words.h"

#include <stdlib.h>
#include <string.h>

/* ---- The packs of all that is bought --------------------------------------------------------- */

enum { OF_PLOT = -1 };

/* What an answer means. */
struct price_row {
	const struct item *item;
	int pack; /* as in price_card_fill; OF_PLOT: the plot itself tells the price */
	bool has_price;
};

struct price_list {
	struct arena arena;
	struct report report;
	struct question question;
	const char **answers, **notes;
	struct price_row *rows;
	size_t capacity[3]; /* of these three */
	bool has_packs;     /* one of them is in the book */
};

static void row_add(struct price_list *list, struct price_row row, const char *answer,
	const char *note)
{
	size_t at = (size_t)list->question.count++;

	list->answers = arena_grow(&list->arena, list->answers, at, &list->capacity[0],
		sizeof *list->answers);
	list->notes = arena_grow(&list->arena, list->notes, at, &list->capacity[1],
		sizeof *list->notes);
	list->rows = arena_grow(&list->arena, list->rows, at, &list->capacity[2],
		sizeof *list->rows);
	list->answers[at] = answer;
	list->notes[at] = note;
	list->rows[at] = row;
	list->question.answers = list->answers;
	list->question.notes = list->notes;
}

static const char *label_of(const struct price_list *list, const struct item *item)
{
	return untied(&list->report, item_sized_label(&list->report, item));
}

static void add_pack(struct price_list *list, const struct item *item, int at)
{
	const struct goods *goods = item->purchase->goods;
	bool is_there = goods && at < goods->pack_count;
	const struct pack *pack = is_there ? &goods->packs[at] : item->purchase->list[0].pack;
	bool has_price = is_there && pack->price != NO_PRICE;

	list->has_packs |= is_there;
	row_add(list, (struct price_row){ item, at, has_price },
		arena_print(&list->arena, "%s, %s", label_of(list, item),
		pack_words(&list->report, pack)),
		has_price ? plain_money(&list->report, pack->price) :
		is_there ? "no price" : "not in the book");
}

static void add_packs(struct price_list *list, const struct item *item)
{
	const struct goods *goods = item->purchase->goods;
	int at = 0;

	if (item->purchase->is_own_price) {
		row_add(list, (struct price_row){ item, OF_PLOT, true }, label_of(list, item),
			say(&list->report, "%s by its card",
			plain_money(&list->report, item->own_price.each)));
		return;
	}
	do
		add_pack(list, item, at);
	while (goods && ++at < goods->pack_count);
}

/* Whose packs are in the book. */
static void add_item(struct price_list *list, const struct item *item)
{
	const struct goods *goods = item->purchase->goods;

	if (goods && goods->pack_count > 0 && !item->purchase->is_own_price)
		row_add(list, (struct price_row){ item, goods->pack_count, false },
			label_of(list, item), "");
}

static bool is_bought(const struct item *item)
{
	return item->purchase && item->purchase->count > 0;
}

static void list_fill(struct price_list *list, const struct editor *editor,
	void (*add)(struct price_list *list, const struct item *item))
{
	const struct item_list *items = &editor->takeoff.items;

	*list = (struct price_list){ .arena = ARENA_EMPTY };
	list->report = editor_report(editor, &list->arena);
	for (size_t i = 0; i < items->count; i++)
		if (is_bought(&items->list[i]))
			add(list, &items->list[i]);
}

/* The next that has no price, from one on and from the start; else that one. */
static int next_open(const struct price_list *list, int from)
{
	int count = list->question.count;

	for (int i = 0; i < count; i++)
		if (!list->rows[(from + i) % count].has_price)
			return (from + i) % count;
	return from < count ? from : 0;
}

/* ---- Asking ---------------------------------------------------------------------------------- */

/* How far somebody has come. */
struct pricing_round {
	struct editor *editor;
	int next, written;
	const char *last;     /* what was written last; NULL: nothing */
	const char *currency; /* of the book when it was asked last */
};

static void ask_more(struct pricing_round *round)
{
	struct price_list list;
	int answer;

	list_fill(&list, round->editor, add_item);
	list.question.text = "Another pack of what?";
	answer = round->editor->asker->choose(round->editor->asker, &list.question);
	if (answer != ANSWER_NONE && price_card_fill(round->editor, list.rows[answer].item,
		list.rows[answer].pack)) {
		round->last = arena_print(&round->editor->words, "%s", list.answers[answer]);
		round->written++;
	}
	arena_clear(&list.arena);
}

/* The card of the plant that has the price. */
static void plant_fill(struct editor *editor, const struct item *item)
{
	const struct plants *plants = &editor->plot->details.plants;
	int which = 0;

	while (strcmp(plants->items[which].name, item->name) != 0 ||
		!block_value(&plants->items[which].block, PLANT_PRICE)->set)
		which++;
	if (plant_card_change(editor, which))
		editor_stroke(editor);
}

static void row_fill(struct pricing_round *round, const struct price_list *list, int answer)
{
	const struct price_row *row = &list->rows[answer];

	round->next = answer;
	if (row->pack == OF_PLOT) {
		plant_fill(round->editor, row->item);
		return;
	}
	if (!price_card_fill(round->editor, row->item, row->pack))
		return;
	round->last = arena_print(&round->editor->words, "%s", label_of(list, row->item));
	round->written++;
	round->next++;
}

/* A card can give all prices of the book another currency. */
static const char *question_words(const struct pricing_round *round, struct arena *words)
{
	const char *currency = round->editor->book.currency;

	if (!round->last)
		return "Which price?";
	if (strcmp(currency, round->currency) == 0)
		return arena_print(words, "%s is written. Which price next?", round->last);
	return arena_print(words, "%s is written, and all prices are in %s now. Which price next?",
		round->last, currency);
}

/* Of a plot for which something is bought. False where the list was left. */
static bool ask(struct pricing_round *round)
{
	struct editor *editor = round->editor;
	struct price_list list;
	int answer, more;

	list_fill(&list, editor, add_packs);
	more = list.question.count;
	list.question.first = next_open(&list, round->next);
	list.question.text = question_words(round, &list.arena);
	round->currency = arena_print(&editor->words, "%s", editor->book.currency);
	if (list.has_packs)
		row_add(&list, (struct price_row){ NULL, 0, true }, "Another pack", "");
	answer = editor->asker->choose(editor->asker, &list.question);
	if (answer != ANSWER_NONE && answer == more)
		ask_more(round);
	else if (answer != ANSWER_NONE)
		row_fill(round, &list, answer);
	arena_clear(&list.arena);
	return answer != ANSWER_NONE;
}

/* ---- The book -------------------------------------------------------------------------------- */

/* Whether a file may still be made where the book should be, or none is named. */
static bool is_missing(const struct editor *editor)
{
	char *path = prices_path(editor->plot, editor->store.path);
	bool is = !path || file_is_missing(path);

	free(path);
	return is;
}

/* Said where it is not. */
static bool is_any_bought(struct editor *editor)
{
	const struct item_list *items = &editor->takeoff.items;

	for (size_t i = 0; i < items->count; i++)
		if (is_bought(&items->list[i]))
			return true;
	editor_say(editor, "Nothing is bought for this plot yet.");
	return false;
}

/* The book as its file is now, and figures counted with it, where there is something to buy; where
 * there is no book it is asked for. False, having said why, where there is none then. */
static bool book_ready(struct editor *editor)
{
	price_book_recheck(editor);
	if (!act_count(editor) || !is_any_bought(editor))
		return false;
	if (editor->has_book || !is_missing(editor))
		return editor->has_book;
	text_clear(&editor->message);
	if (!book_card_fill(editor))
		return false;
	editor_stroke(editor);
	price_book_recheck(editor);
	return act_count(editor) && editor->has_book;
}

static void act_price(struct editor *editor)
{
	struct pricing_round round = { .editor = editor };
	bool is_ready = book_ready(editor);

	while (is_ready && ask(&round))
		is_ready = book_ready(editor);
	if (is_ready && round.written)
		editor_say(editor, "%d price%s written into %s.", round.written,
			round.written == 1 ? "" : "s", editor->book_name);
}

static const struct act acts[] = {
	{ .id = ACT_PRICE, .key_name = "!", .name = "Price of an item",
		.wish = "put in a price",
		.words = "price prices cost costs cheaper dearer buy pack supplier quote",
		.writes = true, .run = act_price },
};
const struct act_group acts_of_price = ACT_GROUP("File", acts);
