#include "base/complain.h"
#include "base/spell.h"

#include <stdarg.h>
#include <stdio.h>

int complain(const char *format, ...)
{
	struct text message = TEXT_EMPTY, line = TEXT_EMPTY;
	va_list list;

	va_start(list, format);
	text_vprint(&message, format, list);
	va_end(list);
	text_add(&line, "parterre: ");
	spell_for_locale(&line, message.bytes);
	text_add(&line, "\n");
	fputs(line.bytes, stderr);
	text_fini(&message);
	text_fini(&line);
	return 2;
}
