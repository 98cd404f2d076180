package suggest

import (
	"testing"

	"github.com/stretchr/testify/require"
)

const small = `# the head
line: A-1 # beside
runs:
  r:
    parts:
      - {id: H1, kind: hose, class: old} # in one line
      # above
      - id: V1
        rated: 10 bar(g)
        inlet: {size: DN 50}
`

func edited(t *testing.T, edits ...edit) string {
	root, err := parse([]byte(small))
	require.NoError(t, err)
	text, err := changed(root, edits, "")
	require.NoError(t, err)
	again, err := changed(root, nil, "")
	require.NoError(t, err)
	require.Equal(t, small, string(again), "the sheet itself is left as it is")
	return string(text)
}

func TestEdit(t *testing.T) {
	for name, c := range map[string]struct {
		edits []edit
		want  string
	}{
		"a value":         {[]edit{put("runs.r.parts[1]", "rated", "16 bar(g)", "")}, "        rated: 16 bar(g)\n"},
		"with a note":     {[]edit{put("runs.r.parts[1]", "rated", "16 bar(g)", "to be shown")}, "        rated: 16 bar(g) # to be shown\n"},
		"a new key":       {[]edit{put("runs.r.parts[1]", "bonded", "yes", "")}, "        bonded: yes\n"},
		"a new mapping":   {[]edit{put("safeguards", "remote_stop", "yes", "")}, "safeguards:\n  remote_stop: yes\n"},
		"a list":          {[]edit{{"runs.r.parts[1]", "wetted", list("PTFE", "FFKM"), ""}}, "        wetted: [PTFE, FFKM]\n"},
		"nested":          {[]edit{put("runs.r.parts[1].inlet", "size", "NPS 2", "")}, "        inlet: {size: NPS 2}\n"},
		"flow to block":   {[]edit{put("runs.r.parts[0]", "class", "new", "why")}, "        class: new # why\n"},
		"keeps its place": {append(drop("runs.r.parts[1]", "rated"), put("runs.r.parts[1]", "rated", "6 bar(g)", "")), "      - id: V1\n        rated: 6 bar(g)\n"},
		"a text like one": {[]edit{put("runs.r.parts[1]", "name", "a: b # c", "")}, "        name: 'a: b # c'\n"},
	} {
		t.Run(name, func(t *testing.T) {
			text := edited(t, c.edits...)
			require.Contains(t, text, c.want)
			for _, comment := range []string{"# the head", "# beside", "# above"} {
				require.Contains(t, text, comment)
			}
		})
	}
	require.NotContains(t, edited(t, drop("runs.r.parts[1]", "rated", "nothing")...), "rated")
	require.Equal(t, small, edited(t, drop("runs.nowhere", "rated")...))

	root, err := parse([]byte(small))
	require.NoError(t, err)
	_, err = changed(root, []edit{put("runs.r.parts[7]", "rated", "1 bar(g)", "")}, "")
	require.EqualError(t, err, "the sheet has no runs.r.parts[7] to change")
	text, err := changed(root, nil, "# PROPOSAL\n#")
	require.NoError(t, err)
	require.Equal(t, "# PROPOSAL\n#\n"+small, string(text))
}
