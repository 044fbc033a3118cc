package org.counterpull.reading;

import java.io.StringReader;
import java.util.Optional;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.DocumentStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.MappingStartEvent;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;

/**
 * Reads YAML by its events, so that a value stays the text that was written: {@code 010} is no
 * octal number, {@code no} no truth value and {@code 1:30} no count of seconds. Anchors, aliases
 * and tags are refused: {@code like} does their work in words.
 */
final class YamlTree {
  private final String file;
  private final Problems problems;
  private final TreeBuilder builder;
  private int documents;

  private YamlTree(String file, Problems problems) {
    this.file = file;
    this.problems = problems;
    this.builder = new TreeBuilder(problems);
  }

  /** The tree of a text; empty when the text says nothing. */
  static Optional<Node> read(String text, String file, Problems problems) throws FaultyText {
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(2 * FileText.LARGEST_BYTES);
    YamlTree tree = new YamlTree(file, problems);
    try {
      for (Event event : new Yaml(options).parse(new StringReader(text))) {
        tree.take(event);
      }
    } catch (MarkedYAMLException e) {
      Mark mark = e.getProblemMark() == null ? e.getContextMark() : e.getProblemMark();
      throw YamlFault.of(e.getProblem(), tree.place(mark), text);
    } catch (YAMLException | IndexOutOfBoundsException | NumberFormatException e) {
      // The scanner lets such exceptions through on broken escapes and directives.
      throw new FaultyText(
          new Place(file, 1, 1), "the text is no YAML", "one \"key: value\" a line");
    }
    return tree.builder.root();
  }

  private void take(Event event) throws FaultyText {
    switch (event.getEventId()) {
      case DocumentStart -> startDocument((DocumentStartEvent) event);
      case Alias -> alias((AliasEvent) event);
      case Scalar -> scalar((ScalarEvent) event);
      case MappingStart, SequenceStart -> {
        refuseMarks((CollectionStartEvent) event, ((CollectionStartEvent) event).getTag());
        builder.begin(place(event.getStartMark()), event instanceof MappingStartEvent);
      }
      case MappingEnd, SequenceEnd -> builder.end();
      case StreamStart, StreamEnd, DocumentEnd, Comment -> {}
    }
  }

  private void startDocument(DocumentStartEvent event) throws FaultyText {
    documents++;
    if (documents > 1) {
      throw new FaultyText(
          place(event.getStartMark()),
          "a second document begins here",
          "one weldment a file; delete the line \"---\" or put the rest in a file of its own");
    }
  }

  private void alias(AliasEvent event) throws FaultyText {
    Place place = place(event.getStartMark());
    problems.add(
        place,
        "",
        "\"*" + event.getAnchor() + "\" is a reference, which weldment files do not have",
        "\"like: NAME\" for an entry like another; quotation marks for a text that starts with *");
    builder.refused(place);
  }

  private void scalar(ScalarEvent event) throws FaultyText {
    refuseMarks(event, event.getTag());
    boolean quoted = event.getScalarStyle() != ScalarStyle.PLAIN;
    builder.scalar(new Node.Scalar(place(event.getStartMark()), event.getValue(), quoted));
  }

  private void refuseMarks(NodeEvent event, String tag) {
    if (event.getAnchor() != null) {
      problems.add(
          place(event.getStartMark()),
          "",
          "\"&" + event.getAnchor() + "\" is an anchor, which weldment files do not have",
          "\"like: NAME\" for an entry like another; quotation marks for a text that starts with &");
    }
    if (tag != null) {
      problems.add(
          place(event.getStartMark()),
          "",
          Problems.quote(tag) + " is a tag, which weldment files do not have",
          "leave it out; quotation marks for a text that starts with !");
    }
  }

  private Place place(Mark mark) {
    return mark == null
        ? new Place(file, 1, 1)
        : new Place(file, mark.getLine() + 1, mark.getColumn() + 1);
  }
}
