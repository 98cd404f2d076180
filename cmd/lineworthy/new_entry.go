package main

import (
	"bytes"
	"embed"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"text/template"

	"github.com/spf13/cobra"

	"lineworthy/catalog"
)

//go:embed templates/*.yaml
var templates embed.FS

// blank is what a template is filled with. A known entry may not be given new keys that bear no evidence, so those
// stay comments: Plain marks the keys that a site need not write again, Fixed those it may not.
type blank struct {
	ID           string
	Known        bool
	Plain, Fixed string
}

var entryKinds = []string{catalog.Fluids, catalog.Hoses, catalog.Materials, catalog.Connections}

func newEntries(s streams) []*cobra.Command {
	var cmds []*cobra.Command
	for _, kind := range entryKinds {
		cmds = append(cmds, &cobra.Command{
			Use:   one(kind) + " ID [DIR]",
			Short: fmt.Sprintf("Write a commented %s of the site's own to DIR/%s/ID.yaml, or to the screen", one(kind), kind),
			Long: fmt.Sprintf(`Write a commented file for a %s of the site's own. DIR is the folder that --catalog names; check
it with: lineworthy catalog lint DIR. An ID of the built-in catalog gives a file that lies over that entry.`, one(kind)),
			Args: cobra.RangeArgs(1, 2),
			RunE: func(_ *cobra.Command, args []string) error { return newEntry(s, kind, args) },
		})
	}
	return cmds
}

func newEntry(s streams, kind string, args []string) error {
	b, err := blankFor(kind, args[0])
	if err != nil {
		return err
	}
	text, err := filled(kind, b)
	if err != nil {
		return err
	}
	if len(args) == 1 {
		_, err := s.out.Write(text)
		return err
	}
	folder := filepath.Join(args[1], kind)
	if err := os.MkdirAll(folder, 0o755); err != nil {
		return usage(err)
	}
	return writeNew(s, filepath.Join(folder, b.ID+".yaml"), text)
}

// entryID is what may be a file name on every system and an id in a sheet.
var entryID = regexp.MustCompile(`^[A-Za-z0-9][A-Za-z0-9-]*$`)

// blankFor refuses an id that is another name of a known entry: two entries would then answer to it.
func blankFor(kind, name string) (blank, error) {
	c := catalog.Open()
	id, err := c.ID(kind, name)
	var missing *catalog.NotFound
	switch {
	case err == nil && id == name:
		return blank{id, true, "# ", "# "}, nil
	case err == nil:
		return blank{}, usage(fmt.Errorf("%q is a name of %s %s already: write `lineworthy new %s %s` to lay a file over it, or choose another id",
			name, one(kind), id, one(kind), id))
	case !errors.As(err, &missing):
		return blank{}, err
	case !entryID.MatchString(name):
		return blank{}, usage(fmt.Errorf("%q is no id: use letters, digits and hyphens, like blue-solvent", name))
	}
	return blank{ID: name}, nil
}

func filled(kind string, b blank) ([]byte, error) {
	t, err := template.ParseFS(templates, "templates/"+one(kind)+".yaml")
	if err != nil {
		return nil, err
	}
	var text bytes.Buffer
	err = t.Execute(&text, b)
	return text.Bytes(), err
}
