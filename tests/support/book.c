#include "support/book.h"

#include <check.h>
#include <string.h>

bool book_try(struct book *book, const char *text, struct book_fault *fault)
{
	struct text quoted = TEXT_EMPTY;
	bool is_read;

	text_add(&quoted, text);
	for (size_t i = 0; i < quoted.length; i++)
		if (quoted.bytes[i] == '\'')
			quoted.bytes[i] = '"';
	is_read = book_read(quoted.bytes, quoted.length, book, fault);
	text_fini(&quoted);
	return is_read;
}

void book_of(struct book *book, const char *rest)
{
	struct text text = TEXT_EMPTY;
	struct book_fault fault;

	text_print(&text, "{'format': 'parterre-prices', 'version': 1, 'currency': 'USD'%s%s}",
		rest[0] ? ", " : "", rest);
	ck_assert_msg(book_try(book, text.bytes, &fault), "%s: found %s, expected %s", fault.path,
		fault.diag.found, fault.diag.expected);
	text_fini(&text);
}

static void pack_at_random(struct text *text, struct random *random, const char *item,
	int suppliers)
{
	bool is_counted = strncmp(item, "soil", 4) != 0 && strcmp(item, "mulch") != 0;
	bool is_bulk = !is_counted && random_below(random, 2);
	static const char *const units[] = { "cu ft", "L", "cu yd", "lb", "kg" };
	const char *unit = units[random_below(random, 5)];
	int size = random_between(random, 1, 200), cents = random_below(random, 30000);

	text_print(text, "{'pack': '%s', 'price': %d.%02d", is_bulk ? "bulk" : "bag", cents / 100,
		random_below(random, 8) ? cents % 100 : 0);
	text_print(text, is_counted ? ", 'size': %d" : ", 'size': '%d %s'", size, unit);
	if (is_bulk && random_below(random, 2))
		text_print(text, ", 'step': '%d %s'", random_between(random, 1, size), unit);
	if (random_below(random, 2))
		text_print(text, ", 'weight': '%d lb'", random_between(random, 1, 3000));
	if (suppliers > 0 && random_below(random, 3))
		text_print(text, ", 'supplier': 'Yard %d'", random_below(random, suppliers));
	text_add(text, "}");
}

static void suppliers_at_random(struct text *text, struct random *random, int suppliers)
{
	text_add(text, "'suppliers': [");
	for (int i = 0; i < suppliers; i++) {
		text_print(text, "%s{'name': 'Yard %d', 'delivery': %d", i ? "," : "", i,
			random_below(random, 200));
		if (random_below(random, 2))
			text_print(text, ", 'carries': '%d kg'", random_between(random, 100, 9000));
		if (random_below(random, 2))
			text_print(text, ", 'holds': '%d cu yd'", random_between(random, 1, 12));
		text_add(text, "}");
	}
	text_add(text, "]");
}

void book_at_random(struct book *book, struct random *random, const char *block)
{
	static const char *const items[] = { "block.wall", "block.cap", "adhesive.cartridge",
		"soil.topsoil", "soil.compost", "mulch" };
	int suppliers = random_below(random, 4);
	const char *between = "";
	struct text text = TEXT_EMPTY;

	suppliers_at_random(&text, random, suppliers);
	if (random_below(random, 2))
		text_print(&text, ", 'vehicle': {'name': 'Van', 'carries': '%d lb', 'holds': '2 "
			"m3'}",
			random_between(random, 100, 3000));
	text_add(&text, ", 'goods': [");
	for (size_t i = 0; i < sizeof items / sizeof *items; i++) {
		if (random_below(random, 6) == 0)
			continue;
		text_print(&text, "%s{'item': '%s'", between, items[i]);
		if (strncmp(items[i], "block", 5) == 0)
			text_print(&text, ", 'block': '%s'", block);
		text_add(&text, ", 'packs': [");
		for (int packs = random_between(random, 1, 5); packs > 0; packs--) {
			pack_at_random(&text, random, items[i], suppliers);
			text_add(&text, packs > 1 ? "," : "]}");
		}
		between = ", ";
	}
	text_add(&text, "]");
	book_of(book, text.bytes);
	text_fini(&text);
}
