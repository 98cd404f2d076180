# METADATA
# title: Only emptying the run keeps shut-in liquid from breaking it
# description: |
#   Without a relief device the run is safe only as long as somebody empties it each time. A stretch
#   forgotten once, full and closed at both ends, breaks when it warms.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: sections
#   scope: [liquid, "!relieved", drained, warmed]
#   needs: []
#   absent: [sections.blocked_kpa, sections.weakest_kpa]
#   message: >-
#     Between {from} and {to} no relief device stands, so the run must be emptied after every transfer
#   action: >-
#     Write the emptying into the procedure with a check by name, or fit a thermal relief device between
#     the two.
#   basis:
#     - document: API Std 521
#       edition: "5th edition, 2007"
#       clause: "5.14.4"
#       standing: published
package rules.expansion.trapped_liquid_relies_on_draining

report contains {"subject": s.id, "from": s.from, "to": s.to} if {
	some s in input.sections
	s.liquid
	not s.relieved
	s.drained
	s.warmed
	not _holds(s)
}

# A section holds by itself only where both pressures are known.
_holds(s) if s.blocked_kpa <= s.weakest_kpa
