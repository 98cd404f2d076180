# METADATA
# title: A hose end has a tail of another size than the hose
# description: |
#   The size stamped on the tail and the size printed on the hose are so far apart that one of the
#   two is read or written wrongly, or that the end hangs on its clamp alone.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: tails
#   scope: []
#   needs: []
#   absent: [tails.tail_um, tails.hose_um]
#   message: "The ends of {part} have tails for hose of {have_um}; the hose is {need_um}"
#   action: "Read both sizes again. Do not use the hose until they agree."
#   basis:
#     - document: ISO 1307
#       edition: "not stated in the table read"
#       clause: "sizes"
#       standing: restated
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.connection.hose_tail_differs

report contains {
	"subject": t.id,
	"part": t.id,
	"have_um": t.tail_um,
	"need_um": t.hose_um,
} if {
	some t in input.tails
	100 * abs(t.tail_um - t.hose_um) > _neighbour_percent * max([t.tail_um, t.hose_um])
}

_neighbour_percent := 6
