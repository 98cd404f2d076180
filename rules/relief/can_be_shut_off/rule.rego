# METADATA
# title: A valve can cut a relief device off from what it protects
# description: |
#   A closed valve under a relief device takes the protection away, and nobody sees it until the
#   pressure rises. US rules bar it unless full relief capacity stays connected at all times.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: reliefs
#   scope: [isolatable_stated]
#   needs: [reliefs.isolatable]
#   message: "A valve can cut {part} off from what it protects"
#   action: >-
#     Take the valve out, lock it open under a written control, or fit two devices with a change-over
#     valve that always leaves one connected; then state that it cannot be cut off.
#   basis:
#     - document: 29 CFR 1910.111
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(9)(v)"
#       standing: published
#     - document: 29 CFR 1910.110
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(10)(viii)"
#       standing: published
package rules.relief.can_be_shut_off

report contains {"subject": r.id, "part": r.id} if {
	some r in input.reliefs
	r.isolatable_stated
	r.isolatable == true
}
