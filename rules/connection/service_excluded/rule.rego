# METADATA
# title: The coupling's standard keeps out what the line carries
# description: |
#   Cam and lever couplings and tank truck couplings are not made for liquefied gas or steam. They can
#   open or lose their gasket, and what is released boils at once.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: joints
#   scope: ["!open_point"]
#   needs: []
#   message: "The joint of {a} and {b} carries {service}, which the standard of its coupling keeps out"
#   action: "Fit a connection made for this service, such as a flange or a coupling whose standard names it."
#   basis:
#     - document: EN 14420-7
#       edition: "2022 final draft"
#       clause: "scope"
#       standing: published
#     - document: EN 14420-6
#       edition: "2013"
#       clause: "scope"
#       standing: published
package rules.connection.service_excluded

report contains {"subject": j.id, "a": j.a, "b": j.b, "service": service} if {
	some j in input.joints
	not j.open_point
	some service in j.excluded_services
}
