#include "app/words/error_templates.h"

#include "app/words/bench_templates.h"
#include "app/words/column_templates.h"
#include "app/words/own_food_templates.h"

namespace nettare {

namespace {

using enum ErrorCode;

std::string_view ofTheFile(ErrorCode code) {
    switch (code) {
        case FileNotReadable:
            return "this file cannot be read, {reason}; check the path and try again.";
        case FileTooLarge:
            return "this file is larger than {most}, too large for a recipe document; check that "
                   "it "
                   "is the right file.";
        case FileNotWritable:
            return "this file cannot be written, {reason}; nothing was changed there.";
        case JsonSyntax:
            return "this is not JSON any more at “{found}”; look there for a missing or doubled "
                   "comma, quote or bracket, or for a comment.";
        case JsonEmpty:
            return "this file is empty; give the path of a recipe document.";
        case JsonEndsEarly:
            return "the document ends too early, a quote or bracket is still open; complete it or "
                   "take a whole copy.";
        case JsonNotUtf8:
            return "this line is not UTF-8 text; save the file as UTF-8.";
        case JsonDuplicateKey:
            return "the key “{key}” stands here twice; remove one.";
        case JsonTooDeep:
            return "the document is nested deeper than {most} levels, a recipe never is; take "
                   "brackets away.";
        case JsonNumberTooLarge:
            return "the number “{found}” is too large; write a smaller one.";
        case TableUnreadable:
            return "this table file is missing or damaged; install the program again or set "
                   "NETTARE_SHARE to the folder that holds it.";
        case OlderTable:
            return "this table file has format {found}, which an earlier program wrote; import the "
                   "table again.";
        case NotATable:
            return "this is some other file, no table of foods; install the program again or set "
                   "NETTARE_SHARE to the right folder.";
        default:
            return {};
    }
}

std::string_view ofTheImport(ErrorCode code) {
    switch (code) {
        case ImportStopped:
            return "the import was stopped; nothing was changed, start it again when you like.";
        case ImportBusy:
            return "another import writes tables into this folder; wait until it has ended, then "
                   "try again.";
        case ImportFileMissing:
            return "there is no “{found}” in it; give the zip or folder as its publisher hands it "
                   "out.";
        case ZipDamaged:
            return "this zip cannot be read ({reason}); fetch the download again.";
        case NotPublished:
            return "this is not how the publisher writes this file, “{found}” where {wanted} is "
                   "due; fetch the download again, or look whether it is another table.";
        case FieldsDiffer:
            return "this row has {found} fields and should have {known}; compare it with the "
                   "publisher's file.";
        case UnitUnconvertible:
            return "“{unit}” of {component} cannot be turned into {wanted}; leave this component "
                   "out, or give the unit that its values are in.";
        case RowRepeated:
            return "an earlier row tells the same of “{found}”, which counts; compare the two.";
        case RowWithoutFood:
            return "the list of foods has no “{found}”; compare this row with it.";
        default:
            return {};
    }
}

std::string_view ofTheKitchen(ErrorCode code) {
    switch (code) {
        case KitchenMissing:
            return "there is no kitchen here; check the path, or begin a new one.";
        case KitchenIsFolder:
            return "this is a folder, no kitchen; give the path of a file that ends in .nettare.";
        case KitchenEmpty:
            return "this file is empty, no kitchen; take a backup, or begin a new kitchen under "
                   "another name.";
        case NotAKitchen:
            return "this is some other file, no kitchen; give the path of a file that ends in "
                   ".nettare.";
        case KitchenNewer:
            return "this kitchen has format {found}, this program knows formats up to {known}; "
                   "update the program.";
        case KitchenOlder:
            return "this kitchen has the older format {found} and is opened only to read, so it "
                   "cannot be brought to format {known}; open it once to write, or copy it to a "
                   "folder of your own.";
        case KitchenDamaged:
            return "this kitchen is damaged, {reason}; keep the file and go on from a backup.";
        case KitchenUnreadable:
            return "this kitchen cannot be read, the file or its folder does not allow it; ask its "
                   "owner to.";
        case KitchenUnfinished:
            return "this kitchen was left in the middle of work, and its last changes still lie in "
                   "the files beside it; copy all of them to a folder of your own and open it "
                   "there.";
        case KitchenNotWritable:
            return "no kitchen can be written here, the file or its folder does not allow it; "
                   "choose a folder of your own.";
        case KitchenExists:
            return "a file of this name is there and stays as it is; choose another name.";
        case KitchenNameTaken:
            return "a name that ends in {found} is kept for files beside a kitchen; choose another "
                   "name.";
        case KitchenNeighbour:
            return "the file “{found}” beside this kitchen belongs to something else; move it "
                   "elsewhere and open the kitchen again.";
        case KitchenHeld:
            return "this kitchen is in work elsewhere, {holder}; close it there and open it again.";
        case KitchenOpenToRead:
            return "this kitchen was opened only to read; open it to write.";
        case KitchenBusy:
            return "another program is busy in this kitchen; wait a moment and try again.";
        case KitchenDiskFull:
            return "the disk is full, and nothing of this change was kept; make room and try "
                   "again.";
        case KitchenDiskFault:
            return "the disk does not answer as it should, {reason}, and nothing of this change "
                   "was kept; check the disk and try again.";
        case MigrationFailed:
            return "this kitchen cannot be brought from format {found} to {known}, {step}: "
                   "{reason}; it is as it was, so open it with the program that wrote it.";
        default:
            return {};
    }
}

std::string_view inTheKitchen(ErrorCode code) {
    switch (code) {
        case RecipeNotFound:
            return "no recipe here is called “{found}”; write its id or how its title begins.";
        case RecipeAmbiguous:
            return "“{found}” can be any of {known}; write more of the title, or the id.";
        case RevisionNotFound:
            return "the recipe “{recipe}” has no revision {found}; it has {known} of them.";
        case LedgerIdUsed:
            return "the ledger has an entry {found} already and stays as it is; record with a new "
                   "id.";
        case LedgerEntryNotFound:
            return "the ledger has no entry {found} that could be corrected; name one of its own.";
        case PagesDamaged:
            return "the file is damaged, {reason}; keep it and go on from a backup.";
        case LedgerBroken:
            return "ledger entry {found} is not what was recorded; compare it and those after it "
                   "with a backup.";
        case RevisionChanged:
            return "revision {revision} of “{recipe}” is not what was kept; compare it with a "
                   "backup.";
        case RevisionNotAsWeighed:
            return "indication “{indication}” in revision {revision} of “{recipe}” is not what the "
                   "ledger shows; compare both with your notes.";
        case RevisionFoodsChanged:
            return "revision {revision} of “{recipe}” no longer pins the food {found} that it "
                   "uses; compare it with a backup.";
        case LedgerShortened:
            return "the ledger has lost what it held when revision {revision} of “{recipe}” was "
                   "kept; compare it with a backup.";
        case FoodVersionChanged:
            return "the food version {found} is not what was copied in; compare it with a backup.";
        case DraftDamaged:
            return "the draft of “{recipe}” does not follow from its journal; go on from its "
                   "newest revision or a backup.";
        default:
            return {};
    }
}

std::string_view ofTheShape(ErrorCode code) {
    switch (code) {
        case WrongKind:
            return "{wanted} is expected here, not {found}; change it.";
        case MissingKey:
            return "the key “{key}” is missing; add it.";
        case UnknownKey:
            return "the key “{key}” is not known here; correct or remove it.";
        case EmptyKey:
            return "a key here is empty; give it a name or remove it.";
        case EmptyText:
            return "the text is empty; write what is meant.";
        case TextTooLong:
            return "the text “{found}” is longer than {most} characters; shorten it.";
        case TextNotClean:
            return "the text “{found}” holds an invisible control character, such as a line break "
                   "or a change of writing direction; remove it.";
        case TooManyItems:
            return "there are more than {most} entries; remove some.";
        case TooFewItems:
            return "the list is empty; give at least one entry.";
        case NotOneOf:
            return "“{found}” is not known here; write one of: {known}.";
        case NotADecimal:
            return "“{found}” is no decimal number; write it with a point, such as “12.5”, with at "
                   "most six digits before and six after it.";
        case NotAnIdentifier:
            return "“{found}” cannot be an id; use a to z, 0 to 9 and -, at most 64.";
        case NotAUuid:
            return "“{found}” is no UUID; write it in lower case like "
                   "3f2b8c1e-0d4a-4b6f-9e21-7c5d8a90b1f2.";
        case NotAHash:
            return "“{found}” is no SHA-256 hash; write its 64 digits 0 to 9 and a to f.";
        case NotATime:
            return "“{found}” is no time with an offset; write it like 2026-05-16T17:41:07+02:00.";
        case NotADate:
            return "“{found}” is no date; write it like 2026-05-16.";
        case OneOfNeeded:
            return "exactly one of these keys is needed here: {known}.";
        case WrongFormat:
            return "the format “{found}” is not {wanted}; it must say “{known}”.";
        case NewerFormat:
            return "version {found} of this kind of file is not known, this program reads version "
                   "{known}; update the program or correct the number.";
        case DuplicateId:
            return "“{found}” stands twice here; remove or rename one.";
        case UnknownReference:
            return "nothing fitting in this document is called “{found}”; correct the name or add "
                   "what it names.";
        case FoodNotFound:
            return "no table at hand has the food {found} (table, release, number); correct them.";
        case NotAKeptRecipe:
            return "“{found}” is no kept revision of this kitchen; write the recipe's id and the "
                   "revision's number, like barley-patties#2.";
        case AlreadyKept:
            return "“{title}” is in this kitchen already, as {recipe}, revision {revision}; leave "
                   "it out or change it.";
        case ComponentUnknown:
            return "“{found}” is no component that can be used here; write an INFOODS tagname such "
                   "as ENERC_KCAL.";
        default:
            return {};
    }
}

std::string_view ofTheDraft(ErrorCode code) {
    switch (code) {
        case LastLine:
            return "this is the only ingredient line, and a recipe needs one; change it, or add "
                   "another first.";
        case EditDoesNotFit:
            return "an edit does not fit, the draft has something else here; nothing was changed, "
                   "undo later edits first or bring back a revision.";
        default:
            return {};
    }
}

std::string_view ofTheAmount(ErrorCode code) {
    switch (code) {
        case NotAnAmount:
            return "“{found}” is no amount; write it like 2, 1/2, 1 1/2, 1.5 or 2-3.";
        case AmountAmbiguous:
            return "“{found}” can mean {decimal} or {grouped}; write {grouped} or leave the zeros "
                   "out.";
        case AmountNotPositive:
            return "the amount “{found}” is not more than zero; correct it.";
        case AmountTooLong:
            return "the amount “{found}” has too many digits; shorten it.";
        case RangeReversed:
            return "the range “{found}” runs backwards; write the smaller one first.";
        case RangeNotAllowed:
            return "a range, “{found}”, cannot be used here; write one number.";
        case UnknownUnit:
            return "the unit “{found}” is not known; use one of: {known}.";
        case UnitNotOfKind:
            return "“{found}” is no unit of mass that scales show; use g, kg, mg, oz or lb.";
        case UnitAsked:
            return "“{found}” may mean {known}; write which.";
        case UnitNotInSystem:
            return "the recipe's measures have no “{found}”; write us {found} or imp {found}, or "
                   "another unit.";
        case NegativeMass:
            return "“{found}” is less than zero; write it without the minus.";
        case NotPositive:
            return "“{found}” is not more than zero; correct it.";
        case OutOfRange:
            return "“{found}” lies outside {low} to {high}; correct it.";
        case NetNegative:
            return "reading “{found}” has a tare of {tare} above its gross of {gross}; exchange "
                   "the two "
                   "or correct one.";
        case ReadingUnitsDiffer:
            return "reading “{found}” takes gross and tare from scales with different units; weigh "
                   "both "
                   "on one scale.";
        case SeriesEmpty:
            return "the series has no reading; add one.";
        case NoSeriesOfPieces:
            return "series “{found}” weighs no single pieces; name one that does, or leave "
                   "“{key}” out.";
        case SeriesKindDiffers:
            return "series “{found}” weighs {of}, the line needs {wanted}; choose another series.";
        case NothingWeighed:
            return "“{found}” holds nothing to weigh; correct the reading.";
        default:
            return {};
    }
}

std::string_view ofTheFigures(ErrorCode code) {
    switch (code) {
        case NoWayToGrams:
            return "line “{line}”: nothing says what one {unit} of {food} weighs; weigh it, give a "
                   "label "
                   "or table measure, or assume grams with a reason.";
        case NoYield:
            return "line “{line}”: {food} is weighed as purchased and nothing says how much of it "
                   "is "
                   "eaten; add a trim series or weigh the edible portion.";
        case WayNotOpen:
            return "line “{line}”: the way to grams “{found}” is not open for {food}; choose "
                   "another or leave the key out.";
        case PiecesNotAmong:
            return "line “{line}” has {found} pieces, fewer than the {pieces} of the series that "
                   "are said "
                   "to be among them; write “others”.";
        case ResidueTooLarge:
            return "{left} g are left over of the {there} g that went in; correct the reading or "
                   "the lines.";
        case ShareNotOfMixture:
            return "the share {found} of line “{line}” is more than the whole line, or the line is "
                   "not in the mixture; correct the share or the mixture.";
        case DripTooLarge:
            return "more {component} ran off than the lines hold ({left} g of {there} g); correct "
                   "the reading or say what it was.";
        case NothingCounted:
            return "no line counts by the recipe's own rules; count optional lines or lines to "
                   "taste, or weigh one.";
        case LineWeighsNothing:
            return "line “{line}”: {food} weighs nothing; correct the reading or remove the line.";
        case NotEatenTooLarge:
            return "what is not eaten weighs as much as the dish or more; correct one of the "
                   "readings.";
        case CookedWeightMissing:
            return "the cooked weight is missing; weigh the dish or give the portion in pieces.";
        case TargetOutOfReach:
            return "no amount of {line} meets it: the end that counts stays between {least} and "
                   "{most} {unit}; change another line.";
        case LabelAmountImpossible:
            return "the label of {food} cannot lawfully print “{found}” for {component}; compare "
                   "it with the pack.";
        case LabelAmountUnreadable:
            return "“{found}” on the label of {food} is no amount; write it like 1.5, 1,5, 1 567 "
                   "or <0.5, and leave a mere trace empty.";
        case LabelNeedsServing:
            return "the label of {food} gives no size of its serving; add its grams or millilitres "
                   "as printed.";
        case LabelNeedsDensity:
            return "the label of {food} speaks of millilitres; add what one millilitre weighs: "
                   "weigh 100 ml of it.";
        case AddedSugarsAboveSugars:
            return "{found} g of added sugars are stated for {food}, which has at most {most} g of "
                   "sugars per 100 g; correct one of the two.";
        case LabelFoodUnknown:
            return "this kitchen has no label called “{found}”; leave the name out to add a new "
                   "one.";
        case LabelFoodAmbiguous:
            return "several labels of this kitchen begin with “{found}”: {known}; write one of "
                   "them whole, or its UUID.";
        case NotALabel:
            return "{food} was typed from another source than a package; change it in the pantry.";
        case PhotoTooLarge:
            return "the photograph is larger than {most} MiB; choose a smaller one.";
        case PhotoNotAnImage:
            return "the photograph is neither a JPEG nor a PNG file; choose one of these.";
        case PhotoMissing:
            return "the kitchen does not have the photograph of this label; add it with --photo or "
                   "with the next version.";
        case PhotoChanged:
            return "a photograph of a package is not the one that was kept; restore a backup.";
        case RecipeCycle:
            return "a recipe cannot be an ingredient of itself: {path}; take one of them out.";
        case NestingTooDeep:
            return "recipes stand in recipes more than {most} deep; write one of them out.";
        case TooManyLines:
            return "with the recipes it uses, this recipe has more than {most} lines; use fewer of "
                   "them.";
        case NotForKeptRecipe:
            return "“{key}” says nothing about {food}, which is a recipe of its own; give its "
                   "amount in pieces, batches or grams, or weigh it, and remove the key.";
        case PanelLineOpen:
            return "the panel line {line} cannot be printed, at least {at_least} and at most "
                   "{at_most}; "
                   "{food} has no value: state one with its reason.";
        case PanelNeedsCookedWeight:
            return "the panel gives the serving in grams and the dish was not weighed; weigh it "
                   "and add "
                   "“cooked”.";
        case NothingPrintsSo:
            return "no value prints as these numbers; recompute them from one value.";
        default:
            return {};
    }
}

}  // namespace

std::string_view templateFor(ErrorCode code) {
    for (const auto group :
         {ofTheFile, ofTheImport, ofTheKitchen, inTheKitchen, benchTemplateFor, ownFoodTemplateFor,
          ofTheShape, ofTheDraft, ofTheAmount, ofTheFigures, columnTemplateFor})
        if (const std::string_view text = group(code); !text.empty()) return text;
    return {};
}

}  // namespace nettare
